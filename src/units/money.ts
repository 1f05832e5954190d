// Why: money is counted in whole cents, so that sums agree to the cent whoever adds them.

/** US dollars in whole cents. */
export type Cents = number & { readonly cents: unique symbol };

/** Whole cents from a number of cents; halves go away from zero. */
export const cents = (n: number): Cents => (Math.sign(n) * Math.round(Math.abs(n)) + 0) as Cents;

/** Whole cents from dollars. */
export const dollars = (n: number): Cents => cents(n * 100);

/** "$1,234" or "$1,234.50": cents are shown only where there are any. */
export function showMoney(amount: Cents): string {
  const whole = Math.trunc(Math.abs(amount) / 100);
  const rest = Math.abs(amount) % 100;
  const grouped = String(whole).replace(/\B(?=(\d{3})+$)/g, ',');
  return `${amount < 0 ? '-' : ''}$${grouped}${rest ? `.${String(rest).padStart(2, '0')}` : ''}`;
}
