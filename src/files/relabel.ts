import { fromSaved, toSaved } from '../workbook/saved.js';
import type { Workbook } from '../workbook/workbook.js';
import type { BuildFiles } from './build-files.js';
import { keep, readKept, type SaveOutcome } from './keep.js';
import { releaseLock, takeLock } from './lock.js';
import type { Label } from './shelf.js';

/**
 * Gives a build another name, puts it away or brings it back. Its journal stays as it is, and so does its
 * place in the list; a build that somebody has open is left alone.
 */
export function relabel(files: BuildFiles, label: Label, nowMs: number): SaveOutcome {
  const locked = takeLock(files.lock, nowMs);
  if (!locked.ok && locked.why === 'held') {
    const words = `The build ${files.id} is open in another Notchbook. Close it there first.`;
    return { ok: false, problem: 'changed-by-another', words };
  }
  if (!locked.ok) return { ok: false, problem: locked.problem, words: locked.words };
  try {
    return relabeled(files, label);
  } finally {
    releaseLock(locked.lock);
  }
}

function relabeled(files: BuildFiles, label: Label): SaveOutcome {
  const kept = readKept(files.main);
  const reading = kept.state === 'fine' ? fromSaved(kept.envelope.doc) : undefined;
  if (kept.state !== 'fine' || reading?.ok !== true) {
    const words = `${files.main} can't be read as it is. Open the build first.`;
    return { ok: false, problem: 'other', words };
  }
  const { rev, stepsInAll, next, savedAtMs } = kept.envelope;
  return keep(files, rev, {
    doc: toSaved(labeled(reading.workbook, label)),
    stepsInAll,
    ...(next === undefined ? {} : { next }),
    savedAtMs,
  });
}

function labeled({ putAway: _, ...workbook }: Workbook, { name, putAway }: Label): Workbook {
  return putAway ? { ...workbook, name, putAway } : { ...workbook, name };
}
