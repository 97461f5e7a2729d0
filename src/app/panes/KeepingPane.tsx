import { ActBanner } from '../../ui/parts/ActBanner';
import { KEEPING } from '../../ui/words/keeping';
import { problemWords } from '../../ui/words/problems';
import { useApp, useAppState } from '../context';

/** What is to be told of keeping projects and can be settled at once; nothing mostly. */
export function KeepingPane() {
  const { store, projects, keeping } = useApp();
  const notice = useAppState((state) => state.keeping.notice);
  const dismiss = () => store.setState((state) => ({ keeping: { ...state.keeping, notice: null } }));
  if (notice?.kind === 'elsewhere') {
    return (
      <ActBanner
        text={notice.wasHere ? KEEPING.wasTaken : KEEPING.isElsewhere}
        remedy={notice.wasHere ? KEEPING.wasTakenRemedy : KEEPING.isElsewhereRemedy}
        isGrave
        acts={[
          { name: KEEPING.goOnHere, act: () => void keeping.goOnHere() },
          { name: KEEPING.goOnWithCopy, act: () => void keeping.goOnWithCopy() },
        ]}
        onDismiss={null}
      />
    );
  }
  if (notice?.kind === 'unreadable') {
    return (
      <ActBanner
        text={`${KEEPING.unreadable(notice.name)} ${problemWords(notice.problem)}`}
        remedy={KEEPING.unreadableRemedy}
        isGrave
        acts={[{ name: KEEPING.saveUnreadable, act: () => void keeping.saveUnreadable(notice.project) }]}
        onDismiss={dismiss}
      />
    );
  }
  if (notice?.kind === 'switched') {
    const { to, from } = notice;
    return (
      <ActBanner
        text={KEEPING.switched(to, from.name)}
        isGrave={false}
        acts={[{ name: KEEPING.back(from.name), act: () => void projects.open(from.id) }]}
        onDismiss={dismiss}
      />
    );
  }
  return null;
}
