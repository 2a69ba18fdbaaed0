import { changedSince } from '@kneewall/documents';
import type { Plan } from '@kneewall/engine';
import type { Project } from '@kneewall/project';
import { useEffect, useRef, useState } from 'react';
import { Button } from '../../look/Button.tsx';
import type { LastPrint } from '../../papers/lastPrint.ts';
import { type Printing, printApart } from '../../papers/printing.ts';

type Told = ReturnType<typeof changedSince> | 'asking' | 'failed';

/** Which sheets of the last print from this device no longer tell what the plan says. */
export function PrintedBefore({ print, plan, project }: { print: LastPrint; plan: Plan; project: Project }) {
  const [told, setTold] = useState<Told | undefined>(undefined);
  const asking = useRef<Printing | undefined>(undefined);
  useEffect(() => () => asking.current?.stop(), []);
  const ask = () => {
    setTold('asking');
    const { units, letters, parts, marks } = print;
    asking.current = printApart({ plan, project, units, letters, parts, only: 'marks' });
    asking.current.done.then((now) => setTold(changedSince(marks, now.marks))).catch(() => setTold('failed'));
  };
  return (
    <div>
      <p>
        Printed from here on {print.day}.{' '}
        <Button onClick={ask} disabled={told === 'asking'}>
          What has changed since?
        </Button>
      </p>
      <div role="status">{told !== undefined && <Answer told={told} />}</div>
    </div>
  );
}

function Answer({ told }: { told: Told }) {
  if (told === 'asking') return <p>Looking.</p>;
  if (told === 'failed') return <p>That could not be found out. Print the set again to be sure.</p>;
  const { changed, added, gone } = told;
  if (changed.length + added.length + gone.length === 0) return <p>Nothing: every sheet still tells the plan.</p>;
  return (
    <>
      <Titles words="Throw away and print again:" titles={changed} />
      <Titles words="New, not on your print:" titles={added} />
      <Titles words="Throw away, the plan no longer has them:" titles={gone} />
    </>
  );
}

const Titles = ({ words, titles }: { words: string; titles: readonly string[] }) =>
  titles.length === 0 ? null : (
    <>
      <p>
        <strong>{words}</strong>
      </p>
      <ul>
        {titles.map((title) => (
          <li key={title}>{title}</li>
        ))}
      </ul>
    </>
  );
