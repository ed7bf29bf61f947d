'use client';

import { useRef } from 'react';
import { sayOhms } from '@/lib/wiring';
import type { PairCell, TraceAnalysis } from '@/shared/wiring';
import styles from './trace.module.css';

export type Pair = readonly [string, string];

interface PairGridProps {
  analysis: TraceAnalysis;
  chosen: Pair | null;
  onChoose: (pair: Pair) => void;
}

const stateWords: Record<PairCell['state'], string> = {
  unread: 'not read',
  joined: 'joined',
  winding: 'coil',
  leakage: 'leakage',
  open: 'open',
  disputed: 'disputed',
};

/** Every pair of terminals once, with what was read or what follows. Arrow keys go from cell to cell. */
export function PairGrid({ analysis, chosen, onChoose }: PairGridProps) {
  const table = useRef<HTMLTableElement>(null);
  const names = terminals(analysis);
  const codes = new Map(analysis.conductors.map(({ name, code }) => [name, code]));
  const cellOf = (a: string, b: string) =>
    analysis.grid.find(({ between }) => between.includes(a) && between.includes(b) && a !== b);
  const isChosen = (cell: PairCell) =>
    chosen !== null && cell.between.includes(chosen[0]) && cell.between.includes(chosen[1]);
  const tabStop = analysis.grid.find(isChosen) ?? analysis.grid[0];
  const go = (row: number, column: number) =>
    table.current?.querySelector<HTMLButtonElement>(`[data-cell="${row}-${column}"]`)?.focus();
  return (
    <div className={styles.gridScroller}>
      <table ref={table} className={styles.grid}>
        <caption className="only-read">Pairs of conductors and what was read between them</caption>
        <thead>
          <tr>
            <td />
            {names.slice(0, -1).map((name) => (
              <th key={name} scope="col">
                {codes.get(name) ?? name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {names.slice(1).map((rowName, row) => (
            <tr key={rowName}>
              <th scope="row">{codes.get(rowName) ?? rowName}</th>
              {names.slice(0, row + 1).map((columnName, column) => {
                const cell = cellOf(rowName, columnName);
                if (!cell) return <td key={columnName} />;
                return (
                  <td key={columnName}>
                    <button
                      type="button"
                      data-cell={`${row}-${column}`}
                      tabIndex={cell === tabStop ? 0 : -1}
                      className={styles.cell}
                      data-state={cell.state}
                      data-basis={cell.basis ?? undefined}
                      aria-pressed={isChosen(cell)}
                      aria-label={`${columnName} and ${rowName}: ${cellWords(cell)}`}
                      onClick={() => onChoose([columnName, rowName])}
                      onKeyDown={(event) => {
                        const step = arrows[event.key];
                        if (!step) return;
                        event.preventDefault();
                        event.stopPropagation();
                        go(row + step[0], column + step[1]);
                      }}
                    >
                      <span className={styles.cellValue}>
                        {cell.ohms === null ? stateWords[cell.state] : sayOhms(cell.ohms)}
                      </span>
                      <span className={styles.cellBasis}>
                        {cell.ohms !== null || cell.state === 'open' ? (cell.basis ?? '') : ''}
                      </span>
                    </button>
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

const arrows: Record<string, readonly [number, number]> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

/** All terminals in drawing order: conductors, then shield, then frame. */
export function terminals(analysis: TraceAnalysis): string[] {
  return [
    ...analysis.conductors.map(({ name }) => name),
    ...(analysis.shield ? ['shield'] : []),
    ...(analysis.frame ? ['frame'] : []),
  ];
}

function cellWords(cell: PairCell): string {
  const value = cell.ohms === null ? '' : `${sayOhms(cell.ohms)}, `;
  return `${value}${stateWords[cell.state]}${cell.basis ? `, ${cell.basis}` : ''}`;
}
