import { describe, expect, test } from 'vitest';
import { type Machine, thisMachine } from '../../src/files/machine.js';
import { dataPlace } from '../../src/files/place.js';

const LINUX: Machine = {
  env: {},
  platform: 'linux',
  home: '/home/lead',
  temp: '/tmp',
  workingFolder: '/work/bench',
};
const MAC: Machine = { ...LINUX, platform: 'darwin', home: '/Users/ann' };
const WINDOWS: Machine = {
  env: { APPDATA: 'C:\\Users\\ann\\AppData\\Roaming' },
  platform: 'win32',
  home: 'C:\\Users\\ann',
  temp: 'C:\\Temp',
  workingFolder: 'D:\\bench',
};

function withEnv(machine: Machine, env: Machine['env']): Machine {
  return { ...machine, env: { ...machine.env, ...env } };
}

describe('where builds are kept', () => {
  // XDG Base Directory Specification: $HOME/.local/share where XDG_DATA_HOME is not set or empty, and
  // relative paths in it are ignored.
  const rows: readonly (readonly [string, string | undefined, Machine, string])[] = [
    ['asked for', '/mnt/stick', withEnv(LINUX, { NOTCHBOOK_HOME: '/nb' }), '/mnt/stick'],
    ['asked for, from here', 'data', LINUX, '/work/bench/data'],
    ['asked for, from home', '~/wood', LINUX, '/home/lead/wood'],
    ['asked for, home itself', '~', LINUX, '/home/lead'],
    ['asked for, a name with a tilde', '~lead', LINUX, '/work/bench/~lead'],
    ['NOTCHBOOK_HOME', undefined, withEnv(LINUX, { NOTCHBOOK_HOME: '/nb' }), '/nb'],
    [
      'NOTCHBOOK_HOME empty',
      '',
      withEnv(LINUX, { NOTCHBOOK_HOME: ' ' }),
      '/home/lead/.local/share/notchbook',
    ],
    ['XDG_DATA_HOME', undefined, withEnv(LINUX, { XDG_DATA_HOME: '/xdg' }), '/xdg/notchbook'],
    [
      'XDG_DATA_HOME relative',
      undefined,
      withEnv(LINUX, { XDG_DATA_HOME: 'xdg' }),
      '/home/lead/.local/share/notchbook',
    ],
    ['Linux', undefined, LINUX, '/home/lead/.local/share/notchbook'],
    ['macOS', undefined, MAC, '/Users/ann/Library/Application Support/notchbook'],
    ['Windows', undefined, WINDOWS, 'C:\\Users\\ann\\AppData\\Roaming\\notchbook'],
    [
      'Windows without APPDATA',
      undefined,
      withEnv(WINDOWS, { APPDATA: undefined }),
      'C:\\Users\\ann\\AppData\\Roaming\\notchbook',
    ],
    ['Windows, asked for', 'E:\\wood', WINDOWS, 'E:\\wood'],
  ];
  test.each(rows)('%s', (_, asked, machine, folder) => {
    expect(dataPlace(asked, machine)).toEqual({ folder, warning: undefined });
  });

  test('without a home folder: in the temporary one, with a warning that says what to do', () => {
    const { folder, warning } = dataPlace(undefined, { ...LINUX, home: undefined });
    expect(folder).toBe('/tmp/notchbook');
    expect(warning).toMatch(/No home folder .*\/tmp\/notchbook.* --data or NOTCHBOOK_HOME/);
  });

  test('a folder that is asked for needs no home', () => {
    const homeless = { ...LINUX, home: undefined };
    expect(dataPlace('/mnt/stick', homeless)).toEqual({ folder: '/mnt/stick', warning: undefined });
  });
});

describe('this machine', () => {
  test.each(['', '/there/is/no/such/home', 'relative'])('HOME is "%s": no home', home => {
    const before = process.env.HOME;
    process.env.HOME = home;
    try {
      expect(thisMachine().home).toBe(undefined);
    } finally {
      process.env.HOME = before;
    }
  });
});
