import { emptyProject } from '@kneewall/project';
import { Button } from '../look/Button.tsx';
import { goTo, useRoute } from '../route/route.ts';
import { useServices, useSession } from '../services.ts';
import type { Barred } from '../session/session.ts';
import './Banner.css';

const barredWords: Readonly<Record<Exclude<Barred, 'opening'>, string>> = {
  insecure:
    'No changes are taken here. This address is not secure, so the browser gives no way to keep work safely. Open Kneewall on this machine itself, or over https.',
  'other-tab':
    'Another tab has Kneewall open and does the writing. Look around here: what is changed there in this project follows at once. Close that tab and this one takes over.',
  damaged:
    'A stored change cannot be read back, so no changes are taken. What you see is the project as it stood before that change. Save it as a file, then open the file.',
};

/** Why nothing can be changed, or that what is open is only a demo. */
export function Banner() {
  const { session } = useServices();
  const barred = useSession((s) => s.barred);
  const origin = useSession((s) => s.origin.kind);
  const invented = useSession((s) => s.project.about?.invented === true);
  const { screen } = useRoute();
  const wide = screen === 'home' || screen === 'first';
  const startOwn = () => {
    session.open(emptyProject, { kind: 'new' });
    goTo({ screen: 'first' });
  };
  if (barred && barred !== 'opening')
    return (
      <div className="banner barred" role="status">
        <p>{barredWords[barred]}</p>
      </div>
    );
  if (origin === 'demo' && !wide)
    return (
      <div className="banner slim">
        <p>Demo, invented data. Your first change makes a copy of it.</p>
      </div>
    );
  if (origin === 'demo')
    return (
      <div className="banner">
        <p>
          This is a demo: the place, its weather, products and prices are invented. Your first change makes a copy of
          it.
        </p>
        <Button look="strong" onClick={startOwn}>
          Start with my own house
        </Button>
      </div>
    );
  return invented ? (
    <div className="banner slim">
      <p>Invented data: nothing in this project is a real place, product or price.</p>
    </div>
  ) : null;
}
