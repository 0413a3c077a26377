/** One line a figure: what, value, goal, and whether it was reached. Returns how many were missed. */
export function printed(part, rows) {
  console.log(`\n${part}`);
  for (const { what, value, unit, goal } of rows) {
    const verdict = goal === undefined ? '' : value <= goal ? 'reached' : 'MISSED';
    const limit = goal === undefined ? '' : `goal ${goal} ${unit}`;
    console.log(
      `  ${what.padEnd(52)} ${value.toFixed(2).padStart(8)} ${unit.padEnd(6)} ${limit.padEnd(16)} ${verdict}`,
    );
  }
  return rows.filter(({ value, goal }) => goal !== undefined && value > goal).length;
}

export function median(values) {
  return quantile(values, 0.5);
}

export function quantile(values, share) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}
