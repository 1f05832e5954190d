// Why: when something could not be had, the page says so in two sentences and offers to try again.
import type { Problem } from '../../wire/api.ts';

export function Trouble({ problem, again }: { problem: Problem; again?: (() => void) | undefined }) {
  return (
    <div className="trouble" role="alert">
      <p>
        <strong>{problem.says}</strong> {problem.remedy}
      </p>
      {again && (
        <button type="button" onClick={again}>
          Try again
        </button>
      )}
    </div>
  );
}
