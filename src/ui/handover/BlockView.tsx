import type { Block, TableBlock } from './blocks';

interface BlockViewProps {
  readonly block: Block;
  /** Of a table: the rows to show. */
  readonly from?: number;
  readonly to?: number;
}

/** A block, or some rows of a table under its column heads. */
export function BlockView({ block, from = 0, to }: BlockViewProps) {
  if (block.kind === 'flow') return <div className="sheet-block">{block.node}</div>;
  return <SheetTable table={block} from={from} to={to ?? block.rows.length} />;
}

interface SheetTableProps {
  readonly table: TableBlock;
  readonly from: number;
  readonly to: number;
}

function SheetTable({ table: { label, columns, rows, look }, from, to }: SheetTableProps) {
  const sum = columns.reduce((total, { width }) => total + width, 0);
  return (
    <table className={`sheet-block sheet-table ${look ? `sheet-table-${look}` : ''}`} aria-label={label}>
      <colgroup>
        {columns.map(({ head, width }) => (
          <col key={head} style={{ width: `${(100 * width) / sum}%` }} />
        ))}
      </colgroup>
      <thead className={look === 'facts' ? 'hidden-visually' : ''}>
        <tr>
          {columns.map(({ head, align }) => (
            <th key={head} scope="col" className={align === 'end' ? 'sheet-end' : ''}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.slice(from, to).map(({ key, cells, begins }) => (
          <tr key={key} className={begins ? 'sheet-begins' : ''}>
            {cells.map((cell, i) => {
              const { head, align } = columns[i]!;
              const className = align === 'end' ? 'sheet-end' : '';
              return i === 0 ? (
                <th key={head} scope="row" className={className}>
                  {cell}
                </th>
              ) : (
                <td key={head} className={className}>
                  {cell}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
