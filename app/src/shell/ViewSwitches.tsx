import { Switch } from '../look/Switch.tsx';
import { type Theme, themes } from '../look/view.ts';
import { useServices, useView } from '../services.ts';

const themeWord: Readonly<Record<Theme, string>> = { light: 'Light', dark: 'Dark', sunlight: 'Sunlight' };

/** Whose units. */
export function UnitsSwitch() {
  const { view } = useServices();
  const units = useView((v) => v.units);
  return <Switch label="Units" value={units} options={{ us: 'ft °F', si: 'm °C' }} choose={(u) => view.setUnits(u)} />;
}

/** Whose units, and which of the three themes. */
export function ViewSwitches() {
  const { view } = useServices();
  const theme = useView((v) => v.theme);
  return (
    <>
      <UnitsSwitch />
      <Switch
        label="Theme"
        value={theme}
        options={Object.fromEntries(themes.map((t) => [t, themeWord[t]])) as Record<Theme, string>}
        choose={(t) => view.setTheme(t)}
      />
    </>
  );
}
