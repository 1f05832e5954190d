// Why: a recording is long and a yard's signal is thin, so how much of a file has gone is shown and can be stopped.
import type { Problem } from '../../wire/api.ts';

export type Sent = { readonly ok: true } | { readonly ok: false; readonly problem: Problem };

const lost: Problem = {
  code: 'no-connection',
  says: 'The connection was lost while this file was on its way.',
  remedy: 'Send it again; what is there already is not sent twice.',
};

/** PUTs one file of a batch. Resolves, never rejects; a stop counts as lost. */
export function sendFile(
  address: string,
  file: File,
  stop: AbortSignal,
  progress: (share: number) => void,
): Promise<Sent> {
  return new Promise((done) => {
    const request = new XMLHttpRequest();
    request.open('PUT', address);
    request.upload.addEventListener('progress', (e) => e.lengthComputable && progress(e.loaded / e.total));
    request.addEventListener('load', () => {
      if (request.status >= 200 && request.status < 300) return done({ ok: true });
      done({ ok: false, problem: readProblem(request.responseText) });
    });
    for (const trouble of ['error', 'abort', 'timeout'])
      request.addEventListener(trouble, () => done({ ok: false, problem: lost }));
    stop.addEventListener('abort', () => request.abort());
    request.setRequestHeader('content-type', file.type || 'application/octet-stream');
    request.send(file);
  });
}

function readProblem(text: string): Problem {
  try {
    const raw = JSON.parse(text) as { says?: unknown };
    if (typeof raw.says === 'string') return raw as Problem;
  } catch {
    // Not JSON: the sentence below stands for it.
  }
  return {
    code: 'not-taken',
    says: 'The server did not take this file.',
    remedy: 'Try it once more, or leave it out.',
  };
}
