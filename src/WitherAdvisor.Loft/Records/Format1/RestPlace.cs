using WitherAdvisor.Sites;

namespace WitherAdvisor.Loft.Records.Format1;

/// <summary>Site and trough of a kept request.</summary>
internal static class RestPlace
{
    public static Site Site(RestFields site) => new(
        site.Number("elevation_m"), site.Number("latitude_deg"), site.Number("longitude_deg"),
        site.NumberOrNull("hot_air_c") ?? Sites.Site.UsualHotAirC,
        Style(site.ObjectOrNull("style")),
        site.NumberOrNull("station_pressure_hpa") * 100);

    public static Trough Trough(RestFields trough) => new(
        trough.Number("area_m2"),
        trough.NumberOrNull("airflow_m3_per_s_per_m2") ?? Sites.Trough.UsualAirflowM3PerSM2,
        trough.NumberOrNull("slowest_fan_share_percent") / 100 ?? 1,
        trough.NumberOrNull("most_load_kg_per_m2") ?? Sites.Trough.UsualMostLoadKgPerM2);

    private static WitherStyle Style(RestFields? given)
    {
        if (given is not { } style)
        {
            return WitherStyle.Short;
        }

        WitherStyle named = style.TextOrNull("name") == WitherStyle.Long.Name ? WitherStyle.Long : WitherStyle.Short;
        return named with
        {
            WantedHygrometricDifferenceK = style.NumberOrNull("wanted_hygrometric_difference_k") ?? named.WantedHygrometricDifferenceK,
            TargetMoistureWetBasis = style.NumberOrNull("target_moisture_wet_basis_percent") / 100 ?? named.TargetMoistureWetBasis,
            PlenumCeilingC = style.NumberOrNull("plenum_ceiling_c") ?? named.PlenumCeilingC,
            HygrometricDifferenceCeilingK = style.NumberOrNull("hygrometric_difference_ceiling_k") ?? named.HygrometricDifferenceCeilingK,
            WetLeafHygrometricDifferenceCeilingK =
                style.NumberOrNull("wet_leaf_hygrometric_difference_ceiling_k") ?? named.WetLeafHygrometricDifferenceCeilingK,
            ShortestHoursSincePlucking = style.NumberOrNull("shortest_since_plucking_hours") ?? named.ShortestHoursSincePlucking,
            ShortestHoursSincePluckingInDryWindySpell =
                style.NumberOrNull("shortest_since_plucking_in_dry_windy_spell_hours") ?? named.ShortestHoursSincePluckingInDryWindySpell,
            LongestHoursSincePlucking = style.NumberOrNull("longest_since_plucking_hours") ?? named.LongestHoursSincePlucking,
            ToleratedSpreadWetBasis = style.NumberOrNull("tolerated_spread_wet_basis_points") / 100 ?? named.ToleratedSpreadWetBasis,
            CoolingHours = style.NumberOrNull("cooling_hours") ?? named.CoolingHours,
        };
    }
}
