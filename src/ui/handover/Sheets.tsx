import { type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import { HANDOVER } from '../words/handover';
import { BlockView } from './BlockView';
import type { FlowPart, SheetPart } from './blocks';
import { type Measured, type Placed, paginate } from './paginate';
import './sheet.css';

export type Paper = 'a4' | 'letter';

interface SheetsProps {
  readonly paper: Paper;
  readonly parts: readonly SheetPart[];
  /** Stands at the foot of each page before its number. */
  readonly running: string;
}

/** The pages of some parts as they print: boxes of the size of the paper, laid out from what the blocks measure. */
export function Sheets({ paper, parts, running }: SheetsProps) {
  const measure = useRef<HTMLDivElement>(null);
  const [laid, setLaid] = useState<ReadonlyMap<string, readonly (readonly Placed[])[]>>(new Map());
  const flows = parts.filter(isFlow);
  // Every time: what stands in a block may have become another by any change.
  useLayoutEffect(() => {
    const next = measured(measure.current!, flows);
    setLaid((before) => (JSON.stringify([...before]) === JSON.stringify([...next]) ? before : next));
  });
  const pages = parts.flatMap((part) => pagesOf(part, laid.get(part.id) ?? []));
  return (
    <>
      <div ref={measure} className={`sheet-measure sheet-${paper}`} aria-hidden="true" inert>
        <div className="sheet-room" />
        {flows.map((part) => (
          <div
            key={part.id}
            className={part.aside === undefined ? 'sheet-body' : 'sheet-body sheet-beside'}
            data-part={part.id}
          >
            {part.blocks.map((block) => (
              <BlockView key={block.key} block={block} />
            ))}
          </div>
        ))}
      </div>
      <div className={`sheets sheet-${paper}`}>
        {pages.map(({ key, title, isTitled, goesOn, content }, i) => (
          <section
            key={key}
            className="sheet"
            data-page={key}
            aria-label={HANDOVER.pageLabel(i + 1, pages.length, title)}
          >
            {isTitled && (
              <header className="sheet-head">
                <h3 className="sheet-title">{goesOn ? HANDOVER.goesOn(title) : title}</h3>
              </header>
            )}
            <div className="sheet-content">{content}</div>
            <footer className="sheet-foot">
              <span>{running}</span>
              <span>{HANDOVER.pageNumber(i + 1, pages.length)}</span>
            </footer>
          </section>
        ))}
      </div>
    </>
  );
}

const isFlow = (part: SheetPart): part is FlowPart => 'blocks' in part;

interface Page {
  readonly key: string;
  readonly title: string;
  readonly isTitled: boolean;
  readonly goesOn: boolean;
  readonly content: ReactNode;
}

function pagesOf(part: SheetPart, laid: readonly (readonly Placed[])[]): readonly Page[] {
  const { id, title } = part;
  if (!isFlow(part)) {
    return [{ key: id, title, isTitled: !part.isUntitled, goesOn: false, content: part.page }];
  }
  return laid.map((placed, i) => ({
    key: i === 0 ? id : `${id}-${i + 1}`,
    title,
    isTitled: true,
    goesOn: i > 0,
    content: <FlowPage part={part} placed={placed} />,
  }));
}

/** The blocks of one page, right of what stands beside them. */
function FlowPage({ part, placed }: { readonly part: FlowPart; readonly placed: readonly Placed[] }) {
  const body = (
    <div className="sheet-body">
      {placed.map(({ block, from, to }) => {
        const one = part.blocks[block];
        return one && <BlockView key={`${one.key}-${from}`} block={one} from={from} to={to} />;
      })}
    </div>
  );
  if (part.aside === undefined) return body;
  return (
    <div className="sheet-halves">
      {part.aside}
      {body}
    </div>
  );
}

/** Text may be set a hair wider in print than on screen: pages keep this much free for it, CSS px. */
const SLACK_PX = 12;

/** The pages of each part, from what its blocks measure at the width of the paper. */
function measured(root: HTMLElement, parts: readonly FlowPart[]): ReadonlyMap<string, readonly (readonly Placed[])[]> {
  const room = root.querySelector('.sheet-room')!.getBoundingClientRect().height - SLACK_PX;
  return new Map(
    parts.map((part) => {
      const body = root.querySelector(`[data-part="${part.id}"]`)!;
      const gap = Number.parseFloat(getComputedStyle(body).rowGap) || 0;
      const blocks = part.blocks.map((block, i): Measured => {
        const element = body.children[i] as HTMLElement;
        if (block.kind === 'flow') return { kind: 'flow', height: heightOf(element), keeps: block.keeps ?? false };
        const rows = [...element.querySelectorAll('tbody > tr')].map(heightOf);
        return { kind: 'table', head: heightOf(element) - rows.reduce((sum, one) => sum + one, 0), rows };
      });
      return [part.id, paginate(blocks, { height: room, gap })];
    }),
  );
}

const heightOf = (element: Element): number => element.getBoundingClientRect().height;
