import { inches } from '../../measure/inch.js';
import type { Block, Page } from '../../text/page.js';
import { clampsAtOnce } from '../clamps-at-once.js';
import { onTheRule, onTheTape, tapeAndExact } from '../on-tape.js';
import type { Plan, SpacingRow, ToolRow } from '../plan.js';
import { footBlocks, squareBlocks } from './square-blocks.js';

/** Even spacing: marks from one end, and the sum that has to close. */
export function spacingPage(plan: Plan): Page {
  return {
    id: 'spacing',
    title: 'Spacing',
    blocks: [
      {
        kind: 'words',
        text: 'Hook the tape once and make all marks from that end. A spacer only holds a piece on its mark.',
      },
      ...plan.spacing.flatMap(row => spacingBlocks(row, plan)),
      ...fineBlocks(plan),
      ...squareBlocks(plan),
      ...footBlocks(plan),
    ],
  };
}

function spacingBlocks(row: SpacingRow, { display }: Plan): readonly Block[] {
  const length = (value: number) => onTheTape(value, display);
  const beside = row.beside.map(it => `${it.count} would leave ${length(it.gap)}`).join('; ');
  return [
    {
      kind: 'heading',
      text: `${row.name}: ${row.count} pieces${row.places > 1 ? `, ${row.places} times` : ''}`,
    },
    {
      kind: 'facts',
      facts: [
        {
          name: 'Gap',
          text: `${tapeAndExact(row.gap.value, display)}${beside === '' ? '' : ` (${beside})`}`,
          because: row.gap.because,
        },
        { name: 'Sum', text: row.closing },
        {
          name: 'Spacer',
          text: `${length(row.spacer.value)}; trusted alone it would end ${driftWords(row, length)}`,
          because: row.drift.because,
        },
        {
          name: 'Through the year',
          text: yearWords(row, value =>
            value < NARROW ? onTheRule(value, display) : length(value),
          ),
          because: row.year.wettest.because,
        },
        { name: 'Near edges', text: row.marks.map(length).join(', ') },
      ],
    },
    { kind: 'list', items: row.year.verdict === 'fine' ? [] : row.year.words },
  ];
}

/** A gap under half an inch is told as finely as a rule shows it: there the year decides. */
const NARROW = inches(1 / 2);

/** What "fine" stands for, told once. */
function fineBlocks({ spacing }: Plan): readonly Block[] {
  const [words] = spacing.find(({ year }) => year.verdict === 'fine')?.year.words ?? [];
  return words === undefined ? [] : [{ kind: 'words', text: `Fine: ${words}` }];
}

function yearWords({ year }: SpacingRow, length: (value: number) => string): string {
  const { today, wettest, driest, verdict } = year;
  const seen = [today, wettest, driest].map(({ value }) => length(value).replace('about ', ''));
  if (new Set(seen).size === 1) return `less than a mark of the tape either way: ${verdict}`;
  return `${length(today.value)} today, ${length(wettest.value)} when wettest, ${length(driest.value)} when driest: ${verdict}`;
}

function driftWords({ drift }: SpacingRow, length: (value: number) => string): string {
  if (Math.abs(drift.value) < 0.05) return 'right';
  return `${length(Math.abs(drift.value))} too ${drift.value > 0 ? 'long' : 'short'}`;
}

/** Tools, and what can hurt. */
export function toolsPage(plan: Plan): Page {
  const clamps = clampsAtOnce(plan);
  return {
    id: 'tools',
    title: 'Tools and cautions',
    blocks: [
      {
        kind: 'table',
        table: {
          id: 'tools',
          columns: [{ title: 'Tool' }, { title: 'Who' }, { title: 'What for', grow: true }],
          rows: plan.tools.map(tool => [
            toolName(tool, clamps),
            tool.who === 'lead' ? 'lead only' : 'both',
            tool.use,
          ]),
        },
      },
      ...clampBlocks(clamps),
      ...plan.cautions.flatMap((caution): readonly Block[] => [
        { kind: 'heading', text: caution.title },
        { kind: 'list', items: caution.lines },
      ]),
      {
        kind: 'words',
        text: "These are the usual cautions. The tool's manual, the label, your local code and licensed practice come first.",
      },
    ],
  };
}

/** Bar clamps are counted, since too few of them stop the work: as many as the time plan has on at once. */
function toolName({ id, name }: ToolRow, clamps: number): string {
  return id === 'clamps' && clamps > 0 ? `${name}: ${clamps}` : name;
}

function clampBlocks(clamps: number): readonly Block[] {
  if (clamps === 0) return [];
  const text = `Bar clamps: ${clamps} are on at once where the work goes as the time plan lays it, two of them to hold work beside the glue. With fewer, wait until the first come off before more glue is brushed; the plan then takes longer.`;
  return [{ kind: 'words', text }];
}
