type Environment = Readonly<Record<string, string | undefined>>;

/**
 * Whether to keep to plain ASCII: asked for (`NOTCHBOOK_ASCII`), a terminal without line drawing, or
 * a language setting that is not UTF-8. `TERM=xterm LANG=C` is plain, `LANG=de_DE.UTF-8` is not.
 */
export function wantsAscii(env: Environment, platform: string): boolean {
  const asked = env.NOTCHBOOK_ASCII ?? '';
  if (asked !== '') return asked !== '0';
  if (env.TERM === 'linux' || env.TERM === 'dumb') return true;
  if (platform === 'win32') return (env.WT_SESSION ?? '') === '';
  const locale = [env.LC_ALL, env.LC_CTYPE, env.LANG].find(value => (value ?? '') !== '') ?? '';
  return !/utf-?8/i.test(locale);
}
