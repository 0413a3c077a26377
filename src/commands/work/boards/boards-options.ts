import { lengthOption, usualLength } from '../length-option.js';
import type { WorkOption } from '../rule.js';
import { WISHES } from './spend.js';

export const BOARDS_OPTIONS: readonly WorkOption[] = [
  {
    name: 'piece',
    kind: 'words',
    say: 'length and how many: 21in*4, or seat=21in*4',
    example: '21in*4',
  },
  {
    name: 'board',
    kind: 'words',
    say: 'a length the store sells, its price, how many it has: 8ft@7.48*3',
    example: '8ft@7.48',
  },
  {
    name: 'on-hand',
    kind: 'words',
    say: 'a board you have: 52in, or 96in:10in-14in with what is no good',
    example: '52in',
  },
  {
    name: 'from',
    kind: 'word',
    say: 'a CSV file with the columns kind,length,count,price,name; kind is piece, board or hand',
    example: 'bench.csv',
    usual: '',
  },
  usualLength('kerf', 'what one cut turns into dust', { example: '1/8in', usual: '1/8in' }),
  {
    ...lengthOption(
      'trim',
      'what comes off one end to square it, blade not counted; 0 if it is square (usual: 1/4in)',
      '1/4in',
    ),
    least: 0,
    usual: '',
  },
  {
    ...lengthOption('trim-both', 'the same off both ends', '1/4in'),
    least: 0,
    usual: '',
  },
  {
    name: 'effort',
    kind: 'number',
    say: 'how long to search: 1 is about a second at most',
    example: '1',
    usual: '1',
    least: 0,
    most: 100,
  },
  {
    name: 'first',
    kind: 'word',
    say: 'what counts more at the same cost: few settings of the stop, or one long offcut',
    example: 'offcut',
    usual: 'settings',
    choices: ['settings', 'offcut'],
  },
  {
    name: 'spend',
    kind: 'word',
    say: 'up to so much more than the cheapest plan, for what --for names (usual: nothing)',
    example: '5.00',
    usual: '',
  },
  {
    name: 'for',
    kind: 'word',
    say: 'what more money is for: fewer boards, fewer settings of the stop, a longer offcut',
    example: 'offcut',
    usual: 'offcut',
    choices: WISHES,
  },
  { name: 'because', kind: 'flag', say: 'shows the sum that proves it', example: '' },
];
