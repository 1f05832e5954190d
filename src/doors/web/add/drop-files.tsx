// Why: a folder, or any of its files, goes in with one movement; what came of each is told plainly.
import { type ChangeEvent, type DragEvent, useRef, useState } from 'react';
import { Link } from 'wouter';
import { Trouble } from '../ask/trouble.tsx';
import { send } from '../kept/outbox.ts';
import { useUnit } from '../unit/unit-context.ts';
import { Account } from './account.tsx';
import { BatchProgress } from './batch-progress.tsx';
import { droppedFiles, pickedFiles } from './dropped-files.ts';
import { useBatch } from './use-batch.ts';

const busy = ['sending', 'understanding'];

export function DropFiles() {
  const { unit } = useUnit();
  const { batch, start, again, understandAnyway, stop } = useBatch(unit, () => void send());
  const [over, setOver] = useState(false);
  const files = useRef<HTMLInputElement>(null);
  const folder = useRef<HTMLInputElement>(null);

  const drop = (e: DragEvent): void => {
    e.preventDefault();
    setOver(false);
    void droppedFiles(e.dataTransfer).then(start);
  };
  const pick = (e: ChangeEvent<HTMLInputElement>): void => {
    if (e.target.files) start(pickedFiles(e.target.files));
    e.target.value = '';
  };
  const someSent = batch.files.some((f) => f.state === 'sent');
  return (
    <>
      {!busy.includes(batch.step) && (
        // biome-ignore lint/a11y/noStaticElementInteractions: dropping is a convenience; the two buttons inside do the same from the keyboard
        <div
          className="drop"
          data-over={over}
          onDragOver={(e) => {
            e.preventDefault();
            setOver(true);
          }}
          onDragLeave={() => setOver(false)}
          onDrop={drop}
        >
          <p>
            Drop the walk’s folder here, or any of its files: the words of the recording (VTT, SRT, text), the
            recording, photos, readings, a drive log. Whatever is missing can come later.
          </p>
          <div className="row">
            <button type="button" className="chief" onClick={() => files.current?.click()}>
              Choose files
            </button>
            <button type="button" onClick={() => folder.current?.click()}>
              Choose a folder
            </button>
          </div>
          <input ref={files} type="file" multiple hidden aria-label="Files of the walk" onChange={pick} />
          <input
            ref={folder}
            type="file"
            multiple
            hidden
            aria-label="Folder of the walk"
            {...{ webkitdirectory: '' }}
            onChange={pick}
          />
        </div>
      )}
      {batch.step !== 'nothing' && <BatchProgress batch={batch} onStop={stop} />}
      {batch.step === 'trouble' && (
        <>
          <Trouble
            problem={
              batch.problem ?? {
                code: '',
                says: 'Some files did not go through.',
                remedy: 'The others are safe with the server.',
              }
            }
            again={again}
          />
          {!batch.problem && someSent && (
            <button type="button" onClick={understandAnyway}>
              Read those that went through
            </button>
          )}
        </>
      )}
      {batch.step === 'stopped' && (
        <div className="row">
          <span>Stopped. What was understood before that is kept.</span>
          <button type="button" onClick={again}>
            Go on
          </button>
        </div>
      )}
      {batch.job && batch.job.account.length > 0 && <Account lines={batch.job.account} />}
      {batch.step === 'done' && (
        <p className="row after-list">
          <Link className="button chief" href={`/unit/${unit}/review`}>
            Review what was heard
          </Link>
          <Link className="button" href={`/unit/${unit}/findings`}>
            See what follows from it
          </Link>
        </p>
      )}
    </>
  );
}
