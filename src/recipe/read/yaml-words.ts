type Words = { readonly why: string; readonly hint: string };

/** What the usual slips in YAML are, by the code that its reader gives them. */
const WORDS: ReadonlyMap<string, Words> = new Map([
  [
    'TAB_AS_INDENT',
    { why: 'This line is indented with a tab.', hint: 'Indent with spaces, two for each level.' },
  ],
  [
    'BAD_INDENT',
    {
      why: 'This does not line up with what is above it, or a bracket is not closed.',
      hint: 'Give words of one group the same indent, and close every [ and {.',
    },
  ],
  [
    'BLOCK_AS_IMPLICIT_KEY',
    {
      why: 'A colon with a space stands inside a text.',
      hint: 'Put the whole text in quotes, such as say: "Two things: a saw and a square."',
    },
  ],
  [
    'MULTILINE_IMPLICIT_KEY',
    { why: 'A word with its colon has to stand on one line.', hint: 'Write word: value.' },
  ],
  [
    'MISSING_CHAR',
    { why: 'A quote, a colon or a bracket is missing here.', hint: 'Close what was opened.' },
  ],
  [
    'UNEXPECTED_TOKEN',
    {
      why: 'Something stands here that does not belong.',
      hint: 'A text with special characters needs quotes around all of it.',
    },
  ],
  [
    'BAD_SCALAR_START',
    {
      why: 'A text cannot begin with this character.',
      hint: 'Put the text in quotes, such as "@ 7.48".',
    },
  ],
  [
    'BAD_DQ_ESCAPE',
    { why: 'A backslash means something in double quotes.', hint: "Use single quotes: 'text'." },
  ],
]);

/** A slip in YAML said so that a woodworker can find it; an unusual one in the reader's own words. */
export function yamlWords(code: string, message: string): Words {
  const known = WORDS.get(code);
  if (known !== undefined) return known;
  const [first = ''] = message.split('\n');
  return { why: `This is not YAML: ${first.slice(0, 120)}.`, hint: 'Look at quotes and indents.' };
}
