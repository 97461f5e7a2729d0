import { finishComponent } from '../../src/engine/finish/component';
import type {
  ComponentRole,
  FinishClass,
  FinishComponent,
  LaidFinish,
  Provenance,
} from '../../src/engine/finish/types';

/** Invented finishes for the judgment tests: id; class; components "role share L* a* b*" (CIELAB D65, 2 degree). */
const TABLE = `
WD-01; wood; base .82 74 6 26; grain .18 68 8 27
WD-02; wood; base .85 75 5.5 25; grain .15 70 7.5 26
WD-03; wood; base .7 44 8 15; grain .3 36 7.5 12
WD-07; wood; base .8 69 9.5 25; fleck .2 62 11 26
ST-01; stone; base .88 37 -1.5 -5.5; cleft .12 43 -1.2 -4.2
ST-02; stone; base 1 82 1.2 8.5
ST-03; stone; base .9 80 1 4.8; vein .1 36 .3 .8
ST-05; stone; base .88 87 -.6 1; vein .12 65 -.8 -1
EN-01; engineered; base .84 88.5 -.8 -.3; vein .16 62 -1.3 -4.3
EN-02; engineered; base 1 94 0 -2.2
EN-03; engineered; base .9 91 -.4 1.2; fleck .1 60 0 0
EN-04; engineered; base 1 87 .8 9.5
EN-05; engineered; base 1 57 -1.6 -5
LM-01; laminate; base 1 96 .2 -2.5
LM-02; laminate; base 1 50 -2 9
SS-01; solid surface; base 1 91.5 -.4 1.5
PT-01; paint; base 1 32 -13 -4.5
PT-02; paint; base 1 92 -.4 1.6
PT-03; paint; base 1 95 -.2 1.2
PT-04; paint; base 1 95 .2 -2.2
PT-05; paint; base 1 95.8 -.3 1
PT-06; paint; base 1 93 -.5 4.5
PT-07; paint; base 1 89.5 .4 11
PT-08; paint; base 1 88 .5 18
PT-09; paint; base 1 90 3 3
PT-10; paint; base 1 79 4 3.5
PT-11; paint; base 1 77 12 17
PT-12; paint; base 1 75 6 30
PT-14; paint; base 1 73 -5.5 6.5
PT-16; paint; base 1 76 -2 -3.4
PT-20; paint; base 1 81 1.4 4.2
PT-21; paint; base 1 60 0 .5
TL-01; glazed; base 1 93 -.3 1.8
TL-02; glazed; base 1 88 .6 12
TL-03; glazed; base 1 94.5 0 -2.8
TL-04; glazed; base .85 50 25 30; pool .15 43 24 26
TL-07; porcelain; base .8 42 21 19; shade .2 37 19 16
VP-01; vinyl; base .7 61 -1 -2.5; grain .3 50 -.8 -2
MT-01; metal; base 1 72 4 27
`;

interface Given {
  readonly class: FinishClass;
  readonly components: readonly string[];
}

const GIVEN = new Map<string, Given>(
  TABLE.trim()
    .split('\n')
    .map((line) => {
      const [id, kind, ...components] = line.split(';').map((part) => part.trim());
      return [id!, { class: kind as FinishClass, components }];
    }),
);

const made = new Map<string, LaidFinish>();

/** A finish of the table, its components declared. */
export function finish(id: string): LaidFinish {
  const given = GIVEN.get(id);
  if (!given) throw new Error(`no test finish ${id}`);
  const known = made.get(id) ?? laidFinish(id, given.class, given.components);
  made.set(id, known);
  return known;
}

/** A finish from components as in the table. */
export function laidFinish(
  id: string,
  kind: FinishClass,
  components: readonly string[],
  provenance: Provenance = 'declared',
): LaidFinish {
  return {
    id,
    label: id,
    class: kind,
    glossGu: 20,
    components: components.map((text) => {
      const [role, share, l, a, b] = text.split(' ');
      const made = finishComponent({
        role: role as ComponentRole,
        share: Number(share),
        color: { kind: 'lab', lab: [Number(l), Number(a), Number(b)], illuminant: 'D65', observer_deg: 2 },
        finishClass: kind,
        provenance,
      });
      if (!made.ok) throw new Error(made.problem.text);
      return made.value;
    }),
  };
}

/** The same finish with every component known to `uncertaintyDe00`, by `provenance`. */
export const knownTo = (of: LaidFinish, uncertaintyDe00: number, provenance: Provenance = 'declared'): LaidFinish => ({
  ...of,
  components: of.components.map((c): FinishComponent => ({ ...c, uncertaintyDe00, provenance })),
});
