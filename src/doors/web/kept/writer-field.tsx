// Why: what is written without a name cannot be asked about later, so the name is asked for where one writes.
import { useState } from 'react';
import { hasWriter, setWriter, writer } from './writer.ts';

export function WriterField() {
  const [name, setName] = useState(() => (hasWriter() ? writer() : ''));
  return (
    <label className="row small">
      <span>You are</span>
      <input
        className="writer"
        value={name}
        placeholder="your name"
        autoComplete="name"
        maxLength={120}
        onChange={(e) => {
          setName(e.target.value);
          setWriter(e.target.value);
        }}
      />
    </label>
  );
}
