// Why: a value is asked for in the way its kind is answered; that it could not be seen is always one of the answers.
import type { Aspect } from '../../../catalogue/part.ts';
import { states, stateWords } from '../../../catalogue/state.ts';
import { NumberField } from './number-field.tsx';
import { type Cells, shapeOf } from './value-cells.ts';

interface Props {
  readonly aspect: Aspect;
  readonly cells: Cells;
  readonly onChange: (cells: Cells) => void;
}

const group = (polarity: string): readonly string[] =>
  stateWords.filter((s) => states[s] === polarity && s !== 'yes' && s !== 'no').toSorted();

export function ValueField({ aspect, cells, onChange }: Props) {
  const unknown = cells.why !== undefined;
  return (
    <fieldset className="form" style={{ margin: 0 }}>
      <legend className="unseen">{aspect.name}</legend>
      {unknown ? (
        <label className="all">
          <span className="ask">Why could it not be seen?</span>
          <input
            value={cells.why}
            maxLength={400}
            placeholder="the door is stuck"
            onChange={(e) => onChange({ ...cells, why: e.target.value })}
          />
        </label>
      ) : (
        <Known aspect={aspect} cells={cells} onChange={onChange} />
      )}
      <label className="row all">
        <input
          type="checkbox"
          checked={unknown}
          onChange={(e) => onChange({ ...cells, why: e.target.checked ? '' : undefined })}
        />
        <span>I could not see or measure it</span>
      </label>
    </fieldset>
  );
}

function Known({ aspect, cells, onChange }: Props) {
  const shape = shapeOf(aspect);
  const set = (change: Partial<Cells>) => onChange({ ...cells, ...change });
  if (shape === 'number') return <NumberField aspect={aspect} cells={cells} onChange={onChange} />;
  if (shape === 'count') {
    return (
      <>
        <label>
          <span className="ask">{aspect.name}: how many?</span>
          <input
            className="num"
            inputMode="numeric"
            value={cells.value}
            onChange={(e) => set({ value: e.target.value })}
          />
        </label>
        <label>
          <span className="ask">Out of how many?</span>
          <input
            className="num"
            inputMode="numeric"
            value={cells.of}
            onChange={(e) => set({ of: e.target.value })}
          />
        </label>
      </>
    );
  }
  if (shape === 'yes or no') {
    return (
      <div className="all choices" role="radiogroup" aria-label={aspect.name}>
        {['yes', 'no', ...(aspect.id === 'operates' ? ['intermittent', 'weak', 'slow'] : [])].map((w) => (
          <label key={w}>
            <input
              type="radio"
              name="yes-no"
              checked={cells.value === w}
              onChange={() => set({ value: w })}
            />
            <span>{w}</span>
          </label>
        ))}
      </div>
    );
  }
  if (shape === 'state') {
    return (
      <label className="all">
        <span className="ask">{aspect.name}: how is it?</span>
        <select value={cells.value} onChange={(e) => set({ value: e.target.value })}>
          <option value="">choose a word</option>
          {(['good', 'bad', 'neutral'] as const).map((p) => (
            <optgroup key={p} label={p === 'good' ? 'good news' : p === 'bad' ? 'bad news' : 'neither'}>
              {group(p).map((s) => (
                <option key={s}>{s}</option>
              ))}
            </optgroup>
          ))}
        </select>
      </label>
    );
  }
  if (shape === 'choice') {
    return (
      <label className="all">
        <span className="ask">{aspect.name}: which?</span>
        <select value={cells.value} onChange={(e) => set({ value: e.target.value })}>
          <option value="">choose one</option>
          {(aspect.of ?? []).map((w) => (
            <option key={w}>{w}</option>
          ))}
        </select>
      </label>
    );
  }
  return (
    <label className="all">
      <span className="ask">{aspect.name}</span>
      <input
        type={shape === 'date' ? 'date' : 'text'}
        value={cells.value}
        maxLength={2000}
        onChange={(e) => set({ value: e.target.value })}
      />
    </label>
  );
}
