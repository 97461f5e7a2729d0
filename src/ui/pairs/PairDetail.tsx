import type { Warning } from '../../engine/judge/assessment';
import type { PairTable, TableCell, TablePart } from '../../engine/judge/pair-table';
import { shownName } from '../words/built-in';
import { ROLE_WORDS } from '../words/finishes';
import { capital } from '../words/numbers';
import { MEETS_WORDS, PAIRS, signWords } from '../words/pairs';
import { retold } from '../words/spoken';
import { PairMark } from './PairMark';

interface PairDetailProps {
  readonly table: PairTable;
  readonly cell: TableCell;
  readonly settingName: string;
  readonly isDark: boolean;
  /** Findings between the two that are no verdict on a pair: an edge, a match that parts. */
  readonly also: readonly Warning[];
}

/** What a square stands for: one sentence and why, then part by part on both bases, numbers one step away. */
export function PairDetail({ table, cell, settingName, isDark, also }: PairDetailProps) {
  const { worst, parts } = cell;
  const [a, b] = [table.rows[cell.a]!, table.rows[cell.b]!];
  const pairs = partPairs(parts);
  return (
    <section className="pair-detail" aria-live="polite" aria-label={PAIRS.both(a.name, b.name)}>
      <h3>{PAIRS.both(a.name, b.name)}</h3>
      {also.map(({ text, severity }) => (
        <p key={text} className={severity === 'grave' ? 'room-strong' : ''}>
          {retold(text)}
        </p>
      ))}
      <p className={worst.severity === 'grave' ? 'room-strong' : ''}>{retold(worst.text)}</p>
      <p className="small">
        {retold(worst.reason)} <span className="quiet">{capital(MEETS_WORDS[cell.meets])}.</span>
      </p>
      <table className="pair-parts small">
        <thead className="quiet">
          <tr>
            <th scope="col">{PAIRS.part}</th>
            <th scope="col">{PAIRS.asSamples}</th>
            {!isDark && <th scope="col">{PAIRS.inLight(settingName)}</th>}
          </tr>
        </thead>
        <tbody>
          {pairs.map(({ key, sample, installed }) => (
            <tr key={key}>
              <th scope="row">
                {capital(PAIRS.between(ROLE_WORDS[sample.a], ROLE_WORDS[sample.b]))}
                {sample.isMinor && <span className="quiet"> ({PAIRS.thin})</span>}
              </th>
              <Verdict part={sample} />
              {!isDark && <Verdict part={installed} />}
            </tr>
          ))}
        </tbody>
      </table>
      <p className="small quiet">
        {shownName(a.label)}; {shownName(b.label)}. {PAIRS.light(settingName, isDark)}
      </p>
      <details className="fold">
        <summary>{PAIRS.numbers}</summary>
        <ul className="fold-list small">
          {also.map(({ why }) => (
            <li key={why}>{retold(why)}</li>
          ))}
          {parts.map((part) => (
            <li key={`${part.a} ${part.b} ${part.basis} ${part.why}`}>
              {capital(PAIRS.between(ROLE_WORDS[part.a], ROLE_WORDS[part.b]))}: {retold(part.why)}
            </li>
          ))}
        </ul>
      </details>
    </section>
  );
}

function Verdict({ part }: { readonly part: TablePart | null }) {
  if (!part) return <td />;
  return (
    <td>
      <PairMark kind={part.verdict} severity={part.severity} />{' '}
      {signWords({ kind: part.verdict, severity: part.severity })}
    </td>
  );
}

interface PartPair {
  readonly key: string;
  readonly sample: TablePart;
  readonly installed: TablePart | null;
}

/** The two bases of the same two parts side by side, the most telling first. */
function partPairs(parts: readonly TablePart[]): PartPair[] {
  const left = [...parts];
  const pairs: PartPair[] = [];
  while (left.length > 0) {
    const [first] = left;
    const isSame = (part: TablePart) => part.a === first!.a && part.b === first!.b;
    const of = (basis: TablePart['basis']) => left.find((part) => isSame(part) && part.basis === basis) ?? null;
    const [sample, installed] = [of('sample'), of('installed')];
    for (const part of [sample, installed]) if (part) left.splice(left.indexOf(part), 1);
    if (sample) pairs.push({ key: `${first!.a} ${first!.b} ${pairs.length}`, sample, installed });
  }
  return pairs;
}
