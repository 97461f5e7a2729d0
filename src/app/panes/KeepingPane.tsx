import { ActBanner, type ActBannerProps } from '../../ui/parts/ActBanner';
import { KEEPING, UNKEPT } from '../../ui/words/keeping';
import { problemWords } from '../../ui/words/problems';
import { plainly } from '../../ui/words/refusals';
import { useApp, useAppState } from '../context';
import { saveProject } from '../files';
import type { WhyUnkept } from '../keeping/store-error';
import type { KeepingNotice } from '../keeping/types';

type Act = ActBannerProps['acts'][number];

/** What is to be told of keeping projects and can be settled at once; nothing mostly. */
export function KeepingPane() {
  const { store, projects, keeping } = useApp();
  const notice = useAppState((state) => state.keeping.notice);
  const update = useAppState((state) => state.update);
  if (!notice) return null;
  const dismiss = () => store.setState((state) => ({ keeping: { ...state.keeping, notice: null } }));
  const reload: Act = { name: KEEPING.reload, act: update ?? (() => window.location.reload()) };
  const save: Act = { name: KEEPING.save, act: () => saveProject(store) };
  const see: Act = {
    name: KEEPING.seeProjects,
    act: () => store.setState({ panel: 'projects', reading: null, picked: null }),
  };
  const acts: { readonly [W in WhyUnkept]: readonly Act[] } = {
    full: [save, see],
    closed: [save],
    newer: [save, reload],
    silent: [save, reload],
  };
  const banner = (): Omit<ActBannerProps, 'onDismiss'> => {
    switch (notice.kind) {
      case 'elsewhere':
        return {
          text: notice.wasHere ? KEEPING.wasTaken : KEEPING.isElsewhere,
          remedy: notice.wasHere ? KEEPING.wasTakenRemedy : KEEPING.isElsewhereRemedy,
          isGrave: true,
          acts: [
            { name: KEEPING.goOnHere, act: () => void keeping.goOnHere() },
            { name: KEEPING.goOnWithCopy, act: () => void keeping.goOnWithCopy() },
          ],
        };
      case 'unreadable':
        return unreadable(notice, reload, () => void keeping.saveUnreadable(notice.project));
      case 'unkept':
        return { ...UNKEPT[notice.why], isGrave: true, acts: acts[notice.why] };
      case 'removed':
        return {
          text: `${KEEPING.removed(notice.name)} ${KEEPING.removedTo(notice.to)}`,
          isGrave: false,
          acts: [{ name: KEEPING.bringBack(notice.name), act: () => void projects.bringBack(notice.id) }],
        };
      case 'switched': {
        const { to, from } = notice;
        return {
          text: KEEPING.switched(to, from?.name ?? null),
          isGrave: false,
          acts: [
            from
              ? { name: KEEPING.back(from.name), act: () => void projects.open(from.id) }
              : { name: KEEPING.backToDemo, act: () => void projects.openDemo() },
          ],
        };
      }
    }
  };
  return <ActBanner {...banner()} onDismiss={notice.kind === 'elsewhere' ? null : dismiss} />;
}

function unreadable(
  { name, problem }: Extract<KeepingNotice, { kind: 'unreadable' }>,
  reload: Act,
  onSave: () => void,
): Omit<ActBannerProps, 'onDismiss'> {
  const isNewer = problem.code === 'newer-version';
  const plain = plainly(problem);
  return {
    text: KEEPING.unreadable(name),
    remedy: isNewer ? KEEPING.newerRemedy : KEEPING.unreadableRemedy,
    detail: `${plain ? `${plain.text} ` : ''}${problemWords(problem)}`,
    isGrave: true,
    acts: [...(isNewer ? [reload] : []), { name: KEEPING.saveUnreadable, act: onSave }],
  };
}
