// Why: a button shows the key that does the same; it is no part of the button's name.
export const Key = ({ name }: { name: string }) => (
  <span className="key wide-only" aria-hidden="true">
    {name}
  </span>
);
