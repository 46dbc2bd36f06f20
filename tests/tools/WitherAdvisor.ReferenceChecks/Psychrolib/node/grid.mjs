// Moist air by psychrolib over a grid, as CSV: whatever a loft may stand in.
import psychrolib from 'psychrolib';

const dryBulbs = Array.from({ length: 23 }, (_, i) => -5 + 2.5 * i);
const humidities = [0.01, 0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.98, 1];
const elevations = [0, 500, 1000, 1500, 2000, 2500];

psychrolib.SetUnitSystem(psychrolib.SI);
console.log('z,t,rh,pressure_pa,saturation_pa,humidity_ratio,wet_bulb_c,dew_point_c,enthalpy_j_per_kg,volume_m3_per_kg,saturated_enthalpy_j_per_kg');
for (const z of elevations) {
  const p = psychrolib.GetStandardAtmPressure(z);
  for (const t of dryBulbs) {
    for (const rh of humidities) {
      const w = psychrolib.GetHumRatioFromRelHum(t, rh, p);
      console.log([
        z, t, rh, p,
        psychrolib.GetSatVapPres(t),
        w,
        psychrolib.GetTWetBulbFromRelHum(t, rh, p),
        psychrolib.GetTDewPointFromRelHum(t, rh),
        psychrolib.GetMoistAirEnthalpy(t, w),
        psychrolib.GetMoistAirVolume(t, w, p),
        psychrolib.GetSatAirEnthalpy(t, p),
      ].join(','));
    }
  }
}
