using WitherAdvisor.Air;
using WitherAdvisor.Canopy;
using WitherAdvisor.LeafAtLoading;

namespace WitherAdvisor.Documentation;

/// <summary>Every equation of the model, as text, with its source.</summary>
public static class ModelEquations
{
    private const string Ashrae = "ASHRAE Handbook – Fundamentals 2017 (SI), ch. 1";
    private const string Fao56 = "Allen et al. 1998, FAO Irrigation and Drainage Paper 56";

    public static IReadOnlyList<ModelEquation> All { get; } =
    [
        new("saturation_pressure", ModelTopic.Air,
            "ln p_ws = C_8/T + C_9 + C_10 T + C_11 T² + C_12 T³ + C_13 ln T", $"{Ashrae}, eq. 5 and 6, after Hyland and Wexler 1983"),
        new("enhancement", ModelTopic.Air,
            "f = 1 + 10⁻⁴ [7.2 + p (0.0320 + 5.9·10⁻⁶ t²)], p in hPa, t in °C", "Buck 1996, over water"),
        new("humidity_ratio", ModelTopic.Air, $"W = {MoistAir.MolarMassRatio} p_w/(p − p_w)", $"{Ashrae}, eq. 20"),
        new("wet_bulb", ModelTopic.Air,
            "W = [(2501 − 2.326 t*) W_s* − 1.006 (t − t*)]/(2501 + 1.86 t − 4.186 t*)", $"{Ashrae}, eq. 33 (35 over ice)"),
        new("enthalpy", ModelTopic.Air, "h = 1.006 t + W (2501 + 1.86 t)", $"{Ashrae}, eq. 30"),
        new("specific_volume", ModelTopic.Air, "v = 287.042 T (1 + 1.607858 W)/p", $"{Ashrae}, eq. 26"),
        new("pressure_at_elevation", ModelTopic.Air,
            $"p = {StandardAtmosphere.SeaLevelPressurePa} (1 − 2.25577·10⁻⁵ Z)^5.2559", $"{Ashrae}, eq. 3"),
        new("hot_air_share", ModelTopic.Air, "φ = (h_plenum − h_ambient)/(h_hot − h_ambient)",
            $"{Ashrae}, adiabatic mixing; hot air is ambient air heated indirectly"),

        new("reference_evapotranspiration", ModelTopic.Weather,
            "ET_o = [0.408 Δ (R_n − G) + γ 37/(T + 273) u_2 (e° − e_a)]/[Δ + γ (1 + 0.34 u_2)]", $"{Fao56}, eq. 53 (Penman–Monteith)"),
        new("soil_stress", ModelTopic.Weather,
            "K_s = (TAW − D_r)/(TAW − RAW), D_r from the day's rain and K_s K_c ET_o", $"{Fao56}, eq. 84 and 85"),
        new("tissue_moisture", ModelTopic.Weather,
            $"m = m_dry + Δm (K_s − k)/(1 − k) + shift of the leaf standard − loss on the way, k = {TissueMoistureAtLoading.StressOfDrought}", "Common practice, no published source: straight between a drought and rains"),
        new("canopy_store", ModelTopic.Weather,
            "dC/dt = share of rain (1 − C/C_max) + dew + fog − share of E_p (C/C_max)^(2/3), 0 ≤ C ≤ C_max; no drying in fog", "Interception store of the kind of Rutter et al. 1971, wet part after Deardorff 1978, filling after Merriam 1960 and Aston 1979, J. Hydrol. 42"),
        new("fog_deposit", ModelTopic.Weather,
            $"fog = {FogDeposit.UsualMmPerH} mm/h · u/{FogDeposit.UsualWindMPerS} m/s, {FogDeposit.LeastMmPerH} to {FogDeposit.MostMmPerH} mm/h", "Deposition velocity ½ u*²/u times liquid water of fog (Lovett 1984; Beswick et al. 1991); sizes from memory; no drying at saturation as leaf-wetness rules have it (Sentelhas et al. 2008)"),
        new("rain_of_steps", ModelTopic.Weather, null, "Common practice, no published source"),
        new("radiation_from_temperature", ModelTopic.Weather,
            "R_s = k (T_max − T_min)^½ R_a, at most a clear sky's", $"{Fao56}, eq. 50 (Hargreaves)"),
        new("demand_error", ModelTopic.Weather,
            "σ² = σ_eq² + Σ (share missing · σ_part)² (b + (1 − b)/days)", "Errors of parts added as independent; b the share that lasts (from memory)"),
        new("moved_forecast", ModelTopic.Weather,
            "T(t) = T_forecast(t) + Δ 2^(−t/τ), Δ what the air read last differs by beyond agreement", "Rapid adjustment by the correlation of errors: Schuhen, Thorarinsdottir and Lenkoski 2019 (arXiv 1910.05101); this form and its times from memory"),
        new("surface_water", ModelTopic.Weather, $"S = r · {CarriedWater.LeafAreaM2PerKg} m²/kg · C − loss on the way", "From memory; r is fitted"),

        new("deficit", ModelTopic.Bed, "D = max(p_ws(T) − p_w, 0)", "Definition"),
        new("wet_fraction", ModelTopic.Bed, "f = min(1, S/S_c)^(2/3)", "Deardorff 1978, J. Geophys. Res. 83"),
        new("cuticle", ModelTopic.Bed, "g_l = g_0 (X − X_e)/(X_ref − X_e)", "Fitted form; no published source for tea"),
        new("film", ModelTopic.Bed, "E = A ρ c D g_b/λ", "Penman 1948 by leaf area, without radiation"),
        new("surface_drying", ModelTopic.Bed, "j_s = f E/(s + γ)", "Penman 1948"),
        new("tissue_drying", ModelTopic.Bed, "j_t = (1 − f) E/(s + γ (1 + g_b/g_l))", "Penman 1948 with a cuticular resistance (Monteith 1965)"),
        new("march", ModelTopic.Bed,
            "∂W/∂z = M (j_s + j_t)/G, ∂T/∂z = −(λ/c) ∂W/∂z, ∂S/∂t = −j_s, ∂X/∂t = −j_t",
            "Quasi-steady deep bed: Bakker-Arkema et al. 1974; Brooker, Bakker-Arkema and Hall 1992"),
        new("leaf_temperature", ModelTopic.Bed, "T_leaf = T − D/(s + γ (1 + g_b/g_l))", "Monteith 1965: the heat that leaf takes from the air is what its water takes to evaporate; of the dry part of a layer, the warmer one"),
        new("turn", ModelTopic.Bed, "q(z) ← (1 − β) q(1 − z) + β mean(q)", "No published source: the bed reversed, then blended toward its mean"),

        new("heat", ModelTopic.Plan, "Q = G (h_plenum − h_ambient)", $"{Ashrae}, energy balance"),
        new("moisture_after", ModelTopic.Plan, "M_w = 100 − 100 (100 − M_0)/outturn, all in percent", "Balance of dry matter"),
        new("fan_power", ModelTopic.Plan, "P = P_full · share of flow³ · share of the time", "Fan laws: ASHRAE Handbook – HVAC Systems and Equipment, ch. Fans; from memory"),
        new("choice", ModelTopic.Plan, null, "Common practice, no published source"),

        new("cases", ModelTopic.Uncertainty, null, "Korobov 1959; Tang 1993"),
        new("percentiles", ModelTopic.Uncertainty, "mean + deviation (z + (z² − 1) skewness/6), of ln hours", "Cornish and Fisher 1937, first term"),
    ];
}
