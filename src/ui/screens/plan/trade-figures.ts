import type { Figure } from '../../../measure/figure.js';
import type { Plan } from '../../../plan/plan.js';

type Named = { readonly name: string; readonly figure: Figure };

/** Figures of the page that says whether it suits the place: planters, pots, and what holds. */
export function placeFigures({ planters, holds }: Plan): readonly Named[] {
  return [
    ...planters.flatMap(row => [
      { name: `${row.name}, high inside`, figure: row.inside.high },
      ...row.pots.flatMap(({ number, rim, air }) => [
        { name: `${row.name}, pot ${number}, rim below the edge`, figure: rim },
        { name: `${row.name}, pot ${number}, air round it`, figure: air },
      ]),
      { name: `${row.name}, pots soaked`, figure: row.potted },
      { name: `${row.name}, soil instead`, figure: row.soil },
      { name: `${row.name}, bags (${row.bag})`, figure: row.bags },
      { name: `${row.name}, soil soaked`, figure: row.soaked },
      { name: `${row.name}, open floor`, figure: row.open },
    ]),
    ...holds.map(({ say, sum, value }) => ({
      name: say,
      figure: { ...value, because: `${sum}: ${value.because}` },
    })),
  ];
}

/** Diagonals, and what goes under feet on ground that falls. */
export function squareFigures({ squares, feet }: Plan): readonly Named[] {
  return [
    ...squares.flatMap(({ step, diagonal, mayDiffer }) => [
      { name: `${step}, diagonal`, figure: diagonal },
      { name: `${step}, diagonals may differ by`, figure: mayDiffer },
    ]),
    ...feet.map(({ shim }) => ({ name: 'Shim under a foot', figure: shim })),
  ];
}

/** How gluing is split, and what a day for gluing and for sealing has to be like. */
export function wetDayFigures({ glueUps, glueDay, sealDay }: Plan): readonly Named[] {
  return [
    ...glueUps.flatMap(({ title, count, clamps, kinds }) => [
      { name: `${title}, glue-ups`, figure: count },
      ...kinds.map(({ minutes }) => ({ name: `${title}, each takes`, figure: minutes })),
      { name: `${title}, clamps`, figure: clamps },
    ]),
    ...glueDay.map(({ name, limit }) => ({
      name: `Glue today, ${name.toLowerCase()}`,
      figure: limit,
    })),
    ...sealDay.map(({ name, limit }) => ({
      name: `Seal today, ${name.toLowerCase()}`,
      figure: limit,
    })),
  ];
}
