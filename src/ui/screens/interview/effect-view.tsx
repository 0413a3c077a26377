import { Box, Text } from 'ink';
import { useMemo } from 'react';
import { allParts, drawView } from '../../../drawing/view.js';
import type { Plan } from '../../../plan/plan.js';
import { cut } from '../../../text/wrap.js';
import { setInCells } from '../../canvas.js';
import { ACCENT, useLook } from '../../theme.js';
import { Lines } from '../../widgets/lines.js';
import { Rule } from '../../widgets/rule.js';
import { type Effect, effectLines } from './effect.js';
import { heedLines, onFewLines } from './heed-lines.js';

type EffectViewProps = {
  readonly effect: Effect;
  readonly width: number;
  readonly height: number;
};

/** What the answers give as they stand: sizes, boards, money, and what does not fit. */
export function EffectView({ effect, width, height }: EffectViewProps) {
  const { plan, problems, current } = effect;
  const known = plan !== undefined || problems.length > 0;
  const title = current ? 'With this answer' : known ? 'Before this answer' : 'Working it out';
  const said = plan === undefined ? [] : onFewLines(effectLines(plan), width);
  const heeds = plan === undefined ? problems : plan.warnings;
  const shown = heedLines(heeds, { width, height: Math.max(0, height - 1 - said.length) });
  return (
    <Box flexDirection="column" width={width} height={height} overflow="hidden" flexShrink={0}>
      <Rule width={width} title={title} />
      <Lines lines={said} />
      {shown.length === 0 ? null : (
        <Text color={ACCENT.heed} wrap="truncate">
          {shown.join('\n')}
        </Text>
      )}
    </Box>
  );
}

type PictureProps = { readonly plan: Plan; readonly columns: number; readonly rows: number };

/** The whole piece from the front, as it would stand there. */
export function Picture({ plan, columns, rows }: PictureProps) {
  const { ascii } = useLook();
  const picture = useMemo(() => {
    const { model, display } = plan;
    const standing = allParts(model);
    const bright = new Set<string>();
    const drawing = drawView({
      model,
      view: 'front',
      bright,
      standing,
      display,
      dimensions: 'overall',
    });
    return setInCells(drawing, { columns, rows: rows - 1 }, { ascii });
  }, [plan, columns, rows, ascii]);
  return (
    <Box flexDirection="column" width={columns} height={rows} overflow="hidden">
      <Lines lines={picture.lines.map(({ text }) => text)} />
      <Text dimColor wrap="truncate">
        {cut(picture.note ?? 'From the front, to scale.', columns)}
      </Text>
    </Box>
  );
}
