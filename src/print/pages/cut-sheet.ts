import { formatFigure } from '../../measure/figure-text.js';
import { cutTable, notchBlocks } from '../../plan/pages/cut-page.js';
import type { Plan, StopSetting } from '../../plan/plan.js';
import { count } from '../../text/plural.js';
import type { Piece } from '../sheet/piece.js';
import { blockPieces } from '../sheet/set-blocks.js';
import { tablePieces } from '../sheet/set-table.js';
import { headingPieces, itemPieces, titlePieces, wordPieces } from '../sheet/set-words.js';
import type { Pack } from './pack.js';
import { piecesCut } from './so-far.js';

/** For the saw: the settings of the stop in their order, what each piece is, where it is notched. */
export function cutPieces(pack: Pack): readonly Piece[] {
  const { plan, measure } = pack;
  return [
    ...titlePieces('At the saw', measure),
    ...wordPieces(
      'One setting of the stop for each line, in this order: what is too short to hold while the boards are long, then the longest first. Cut one, measure it, then the others. Write the mark on every piece.',
      measure,
    ),
    ...tablePieces(stopTable(pack), measure),
    ...headingPieces('What each piece is', measure),
    ...tablePieces({ ...cutTable(plan), size: 10.5, strong: 0 }, measure),
    ...blockPieces(notchBlocks(plan), measure),
    ...headingPieces('Every time', measure),
    ...sawCautions(plan).flatMap(text => itemPieces(text, 'dash', measure)),
  ];
}

function stopTable(pack: Pack) {
  const { plan } = pack;
  const isCut = plan.sawOrder.map(setting => piecesCut(setting, pack));
  return {
    columns: [
      { title: 'Stop at', align: 'right' as const },
      { title: 'Board' },
      { title: 'Pieces', align: 'right' as const },
      { title: 'Marks', grow: true },
      ...(pack.build === undefined ? [] : [{ title: 'Cut', align: 'right' as const }]),
    ],
    rows: plan.sawOrder.map((setting, at) => [
      formatFigure(setting.length, plan.display),
      setting.section,
      String(setting.count),
      markWords(setting),
      ...(pack.build === undefined ? [] : [`${isCut[at]} of ${setting.count}`]),
    ]),
    ticks: plan.sawOrder.map((setting, at) => isCut[at] === setting.count),
    size: 12,
    strong: 0,
  };
}

function markWords({ marks }: StopSetting): string {
  return marks
    .map(({ mark, count: times, name }) => `${mark}: ${count(times, name.toLowerCase())}`)
    .join(', ');
}

/** The cautions that steps of cutting name. */
function sawCautions({ cautions, steps }: Plan): readonly string[] {
  const wanted = new Set(steps.filter(({ phase }) => phase === 'cut').flatMap(({ care }) => care));
  return cautions
    .filter(({ id }) => wanted.has(id))
    .map(({ title, lines }) => `${title}: ${lines.join(' ')}`);
}
