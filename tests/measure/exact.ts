/** Whole-number arithmetic to check lengths against: an inch is 127/5 mm, exactly. */
export type Ratio = { readonly top: bigint; readonly bottom: bigint };

export function ratio(top: number | bigint, bottom: number | bigint): Ratio {
  return { top: BigInt(top), bottom: BigInt(bottom) };
}

export function inchesToMm({ top, bottom }: Ratio): Ratio {
  return { top: top * 127n, bottom: bottom * 5n };
}

export function toNumber({ top, bottom }: Ratio): number {
  return Number(top) / Number(bottom);
}

/** The nearest whole number to the ratio times `parts`, midway upward. */
export function nearestParts({ top, bottom }: Ratio, parts: number): bigint {
  return (2n * top * BigInt(parts) + bottom) / (2n * bottom);
}

/** `747` sixteenths as a tape says them: "46-11/16". */
export function tapeText(steps: bigint, parts: number): string {
  const all = BigInt(parts);
  const whole = steps / all;
  let top = steps % all;
  let bottom = all;
  if (top === 0n) return `${whole}`;
  while (top % 2n === 0n && bottom % 2n === 0n) {
    top /= 2n;
    bottom /= 2n;
  }
  return whole === 0n ? `${top}/${bottom}` : `${whole}-${top}/${bottom}`;
}
