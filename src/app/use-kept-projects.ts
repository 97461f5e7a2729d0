import { useEffect, useState } from 'react';
import { useApp } from './context';
import type { KeptProject } from './keeping/database';

/** The projects kept in this browser, as long as somebody looks; null until the browser has answered. */
export function useKeptProjects(): readonly KeptProject[] | null {
  const { projects } = useApp();
  const [kept, setKept] = useState<readonly KeptProject[] | null>(null);
  useEffect(() => {
    let isWanted = true;
    const look = async () => {
      const found = await projects.list();
      if (isWanted) setKept(found);
    };
    void look();
    const stop = projects.onChange(() => void look());
    return () => {
      isWanted = false;
      stop();
    };
  }, [projects]);
  return kept;
}
