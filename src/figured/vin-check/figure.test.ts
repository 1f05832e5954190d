// Why: a VIN with a wrong character must not pass, and no swap is ever chosen.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';
import { passingSwaps } from './figure.ts';

describe('vin-check', () => {
  test.each(['11111111111111111', '1ZZAB1C28MA012345', '1zzab-1cd4 a0012345'])('%s passes', (vin) => {
    expect(answerByHand('vin-check', { vin })).toMatchObject({ words: 'passes' });
  });
  test('one wrong digit fails and says what position 9 should be', () => {
    const a = answerByHand('vin-check', { vin: '1ZZAB1C28MA012346' });
    expect(a.words).toBe('fails');
    expect(a.working?.join(' ')).toContain('position 9 must be');
  });
  test('every swap it names does pass, and differs in one place', () => {
    const swaps = passingSwaps('1ZZAB1C28MAO12345');
    expect(swaps).toContain('position 12: 0 for O');
    expect(answerByHand('vin-check', { vin: '1ZZAB1C28MAO12345' })).toMatchObject({ words: 'fails' });
  });
  test('a wrong length is no VIN', () => {
    expect(answerByHand('vin-check', { vin: '1ZZAB1C28MA01234' })).toEqual({ refused: 'vin length' });
  });
});
