// Why: how long a person takes at a keyboard is reckoned from keystrokes by a published model, not from how fast a test can press keys.

/**
 * The keystroke-level model: S. K. Card, T. P. Moran, A. Newell, "The keystroke-level model for user performance time with
 * interactive systems", Communications of the ACM 23 (1980) 396-410; figures from memory: K 0.28 s for an average typist
 * who is no secretary (0.20 s average skilled), M 1.35 s for a mental preparation. Here K is charged for every key, Shift one of its own, and M
 * before every key that rules on something and again before every value that is typed. Listening is charged as long as it plays.
 */
const K = 0.28;
const M = 1.35;
/**
 * The model has no operator for reading. A stricter figure charges, for every decision, M or the reading of the lines it is
 * made on, whichever is longer, at 238 words a minute: silent reading of English, M. Brysbaert, Journal of Memory and Language
 * 109 (2019) 104047; from memory.
 */
const secondsAWord = 60 / 238;

export class Pace {
  keys = 0;
  decisions = 0;
  private mental = 0;
  private reading = 0;
  private listening = 0;

  key(name: string): void {
    this.keys += /^([A-Z?]|Shift\+.*)$/.test(name) ? 2 : 1;
  }
  text(typed: string): void {
    for (const letter of typed) this.key(letter);
  }
  /** A decision made on the lines that are read for it. */
  decide(lines: string): void {
    this.decisions += 1;
    this.mental += M;
    this.reading += Math.max(M, lines.split(/\s+/).filter(Boolean).length * secondsAWord);
  }
  listen(seconds: number): void {
    this.listening += seconds;
  }
  /** Seconds by the keystroke-level model. */
  get seconds(): number {
    return this.keys * K + this.mental + this.listening;
  }
  /** Seconds with reading charged. */
  get readingSeconds(): number {
    return this.keys * K + this.reading + this.listening;
  }
}
