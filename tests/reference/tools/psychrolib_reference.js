// Writes tests/reference/data/psychrolib_states.csv: moist-air states from the npm package
// `psychrolib` (MIT licence), an implementation of ASHRAE Fundamentals 2017 independent of ours.
// Run once in an empty folder:  npm install psychrolib@1.1.1
//   node psychrolib_reference.js > psychrolib_states.csv
const p = require('psychrolib');
p.SetUnitSystem(p.SI);
const out = (...v) => console.log(v.join(','));
console.log('# Moist-air states by the npm package psychrolib 1.1.1 (its source says version 2.5.0),');
console.log('# ASHRAE Fundamentals 2017 relations. Made by tests/reference/tools/psychrolib_reference.js.');
console.log('# It iterates dew and wet bulb to 0.001 C. W kg/kg, h kJ/kg, v m3/kg dry air, rho kg/m3.');
out('t_C', 'RH', 'P_Pa', 'psat_Pa', 'pw_Pa', 'W', 't_dew_C', 't_wet_C', 'h_kJ_kg', 'v_m3_kg',
    'rho_kg_m3', 'VPD_Pa');
for (const height of [0, 800, 2500]) {
  const pressure = p.GetStandardAtmPressure(height);
  for (const t of [-15, -4, 0, 2, 4, 8, 11, 13, 15, 18, 22, 26, 32, 40, 55]) {
    for (const rh of [0.1, 0.3, 0.5, 0.65, 0.7, 0.75, 0.8, 0.9, 0.98]) {
      const w = p.GetHumRatioFromRelHum(t, rh, pressure);
      out(t, rh, pressure.toPrecision(12), p.GetSatVapPres(t).toPrecision(12),
          p.GetVapPresFromRelHum(t, rh).toPrecision(12), w.toPrecision(12),
          p.GetTDewPointFromRelHum(t, rh).toFixed(6),
          p.GetTWetBulbFromRelHum(t, rh, pressure).toFixed(6),
          (p.GetMoistAirEnthalpy(t, w) / 1000).toPrecision(12),
          p.GetMoistAirVolume(t, w, pressure).toPrecision(12),
          p.GetMoistAirDensity(t, w, pressure).toPrecision(12),
          p.GetVaporPressureDeficit(t, w, pressure).toPrecision(12));
    }
  }
}
