import { spawn } from '@lydell/node-pty';

/** The child's environment: a plain terminal, nothing that makes Ink or Node behave otherwise. */
export function terminalEnv(extra) {
  const { CI, CONTINUOUS_INTEGRATION, NO_COLOR, FORCE_COLOR, VITEST, NODE_ENV, ...rest } =
    process.env;
  return { ...rest, TERM: 'xterm-256color', LANG: 'en_US.UTF-8', LC_ALL: 'en_US.UTF-8', ...extra };
}

export function open(args, { columns = 100, rows = 40, env = {} } = {}) {
  return spawn(process.execPath, args, {
    name: 'xterm-256color',
    cols: columns,
    rows,
    env: terminalEnv(env),
  });
}

/** Milliseconds from starting a program until it has written `text`. */
export function untilText(args, text, options) {
  return new Promise((resolve, reject) => {
    const from = performance.now();
    const child = open(args, options);
    let seen = '';
    const late = setTimeout(
      () => reject(new Error(`never wrote ${text}: ${seen.slice(-400)}`)),
      20_000,
    );
    child.onData(data => {
      seen += data;
      if (!seen.includes(text)) return;
      clearTimeout(late);
      const took = performance.now() - from;
      child.kill('SIGKILL');
      resolve(took);
    });
  });
}
