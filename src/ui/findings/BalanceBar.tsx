import { useId } from 'react';
import { FINDINGS } from '../words/findings';
import { seenShare } from '../words/numbers';

export type Shares = readonly [warm: number, leaning: number, neutral: number, cool: number];

const WIDTH = 308;
const HEIGHT = 24;
const THIN = 8;

interface BalanceBarProps {
  readonly samples: Shares;
  /** Null where there is no light to read them in. */
  readonly installed: Shares | null;
}

/** The shares as lengths: warm hatched, leaning light-hatched, neutral plain, cool dotted; a thin second bar as installed. */
export function BalanceBar({ samples, installed }: BalanceBarProps) {
  const id = useId();
  const patterns = [`warm${id}`, `lean${id}`, '', `cool${id}`];
  const bar = (shares: Shares, y: number, height: number) => {
    const sum = shares.reduce((total, share) => total + share, 0) || 1;
    let x = 0;
    return shares.map((share, index) => {
      const width = (share / sum) * WIDTH;
      const at = x;
      x += width;
      if (width <= 0) return null;
      const key = `${y}-${patterns[index]}`;
      return (
        <g key={key}>
          <rect x={at} y={y} width={width} height={height} className="bar-ground" />
          {patterns[index] && <rect x={at} y={y} width={width} height={height} fill={`url(#${patterns[index]})`} />}
          <rect x={at + 0.5} y={y + 0.5} width={Math.max(0, width - 1)} height={height - 1} className="bar-outline" />
        </g>
      );
    });
  };
  return (
    <div className="balance-figure">
      <svg
        viewBox={`0 0 ${WIDTH} ${HEIGHT + 4 + THIN}`}
        className="balance-bar"
        preserveAspectRatio="none"
        aria-hidden="true"
        focusable="false"
      >
        <defs>
          <pattern id={`warm${id}`} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path d="M1.25 0v6" className="bar-ink" strokeWidth="2.5" />
          </pattern>
          <pattern id={`lean${id}`} width="10" height="10" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path d="M.5 0v10" className="bar-ink" strokeWidth="1" />
          </pattern>
          <pattern id={`cool${id}`} width="6" height="6" patternUnits="userSpaceOnUse">
            <circle cx="2" cy="2" r="1.4" className="bar-dot" />
            <circle cx="5" cy="5" r="1.4" className="bar-dot" />
          </pattern>
        </defs>
        {bar(samples, 0, HEIGHT)}
        {installed && bar(installed, HEIGHT + 4, THIN)}
      </svg>
      <table className="balance-table">
        <thead>
          <tr>
            <td />
            <th scope="col">
              <Key pattern="warm" /> {FINDINGS.warm}
            </th>
            <th scope="col">
              <Key pattern="lean" /> {FINDINGS.leaning}
            </th>
            <th scope="col">
              <Key pattern="plain" /> {FINDINGS.neutral}
            </th>
            <th scope="col">
              <Key pattern="cool" /> {FINDINGS.cool}
            </th>
          </tr>
        </thead>
        <tbody>
          <Row head={FINDINGS.asSamples} shares={samples} />
          {installed && <Row head={FINDINGS.asInstalled} shares={installed} />}
        </tbody>
      </table>
    </div>
  );
}

function Row({ head, shares }: { readonly head: string; readonly shares: Shares }) {
  const [warm, leaning, neutral, cool] = shares;
  return (
    <tr>
      <th scope="row">{head}</th>
      <td>{seenShare(warm)}</td>
      <td>{seenShare(leaning)}</td>
      <td>{seenShare(neutral)}</td>
      <td>{seenShare(cool)}</td>
    </tr>
  );
}

function Key({ pattern }: { readonly pattern: 'warm' | 'lean' | 'plain' | 'cool' }) {
  return (
    <svg className="balance-key" viewBox="0 0 12 12" width="12" height="12" aria-hidden="true" focusable="false">
      <rect x=".5" y=".5" width="11" height="11" className="bar-ground" />
      {pattern === 'warm' && <path d="M0 6 6 0M0 12 12 0M6 12l6-6" className="bar-ink" strokeWidth="2" />}
      {pattern === 'lean' && <path d="M0 12 12 0" className="bar-ink" strokeWidth="1" />}
      {pattern === 'cool' && (
        <>
          <circle cx="3.5" cy="3.5" r="1.4" className="bar-dot" />
          <circle cx="8.5" cy="8.5" r="1.4" className="bar-dot" />
          <circle cx="8.5" cy="3.5" r="1.4" className="bar-dot" />
          <circle cx="3.5" cy="8.5" r="1.4" className="bar-dot" />
        </>
      )}
      <rect x=".5" y=".5" width="11" height="11" className="bar-outline" />
    </svg>
  );
}
