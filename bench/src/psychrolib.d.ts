/** The part of the general psychrometric library that is used as a reference; it ships no types. */
declare module 'psychrolib' {
  const library: {
    SI: number;
    SetUnitSystem(system: number): void;
    CalcPsychrometricsFromRelHum(t: number, rh: number, p: number): number[];
    GetHumRatioFromRelHum(t: number, rh: number, p: number): number;
    GetTDewPointFromRelHum(t: number, rh: number): number;
    GetTWetBulbFromRelHum(t: number, rh: number, p: number): number;
    GetMoistAirEnthalpy(t: number, w: number): number;
    GetMoistAirVolume(t: number, w: number, p: number): number;
  };
  export default library;
}
