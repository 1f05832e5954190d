// Why: an empty yard says what to do first.
export function EmptyYard({ onTakeIn }: { onTakeIn: () => void }) {
  return (
    <section className="empty">
      <h2>Nothing stands in the yard yet.</h2>
      <p>
        Take in a unit first: what kind it is and what you call it is enough. Then drop the recording of your
        walk round it, its words, and the photos, and read what follows from them.
      </p>
      <button type="button" className="chief" onClick={onTakeIn}>
        Take in a unit
      </button>
    </section>
  );
}
