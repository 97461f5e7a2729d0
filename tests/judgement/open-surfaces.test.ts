import { expect, it } from 'vitest';
import { balanceSentence } from '../../src/engine/judge/balance-sentence';

const carriers = { warm: [], leaning: [], cool: ['base-fronts', 'floor'], neutral: ['wall'] } as const;

it('says where a change would be easy: the surfaces still open', () => {
  const of = { verdict: 'lacks-warm', firmness: 'firm', carriers } as const;
  expect(balanceSentence({ ...of, open: ['backsplash', 'wall'] })).toMatch(
    /settle it; the backsplash and the wall are still open\.$/,
  );
  expect(balanceSentence({ ...of, open: ['wall'] })).toMatch(/; the wall is still open\.$/);
  expect(balanceSentence({ ...of, open: [] })).toMatch(/settle it\.$/);
});

it('says nothing of open surfaces where nothing is missing', () => {
  const balanced = balanceSentence({ verdict: 'balanced', firmness: 'firm', carriers, open: ['wall'] });
  expect(balanced).not.toContain('still open');
});
