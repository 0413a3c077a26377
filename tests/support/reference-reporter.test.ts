import { describe, expect, test } from 'vitest';
import { countRows, reportText } from './reference-reporter.js';

describe('counting rows held against their sources', () => {
  const counted = [
    { source: 'Table A', rows: ['[1]', '[2]'] },
    { source: 'Table B, from memory', rows: ['[1]'] },
    { source: 'Table C', rows: ['[1]', '[2]', '[3]'] },
    { source: 'Table A', rows: ['[2]', '[3]'] },
  ];

  test('a row that two files hold counts once', () => {
    expect(countRows(counted)).toContainEqual({ source: 'Table A', count: 3 });
  });

  test('remembered rows are told and left out of the total', () => {
    expect(reportText(countRows(counted)).split('\n')).toEqual([
      'rows held against their sources, in files where every test passed:',
      '     3  Table A',
      '     3  Table C',
      '     1  Table B, from memory',
      'rows from memory, not counted: 1',
      'reference rows: 6',
    ]);
  });
});
