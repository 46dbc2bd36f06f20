using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>A row of Site. Types are exactly SQLite's and in the order selected: Dapper fills no other constructor.</summary>
internal sealed record SiteRow(
    string Id,
    string Name,
    string TimeZone,
    double ElevationM,
    double LatitudeDeg,
    double LongitudeDeg,
    double HotAirC,
    double? StationPressurePa,
    string StyleName,
    double WantedHygrometricDifferenceK,
    double TargetMoistureWetBasis,
    double PlenumCeilingC,
    double HygrometricDifferenceCeilingK,
    double WetLeafHygrometricDifferenceCeilingK,
    double ShortestHoursSincePlucking,
    double ShortestHoursSincePluckingInDryWindySpell,
    double LongestHoursSincePlucking,
    double ToleratedSpreadWetBasis,
    double CoolingHours,
    string? Feed,
    double PlenumMarginK,
    long MostTurns,
    double TurnFreeLastHours,
    double LeastHoursBetweenTurns,
    string Pace,
    double? LoftHeaterKW)
{
    public static SiteRow Of(StoredSite stored)
    {
        var site = stored.Site;
        var style = site.Style;
        return new(
            stored.Id, stored.Name, stored.TimeZone,
            site.ElevationM, site.LatitudeDeg, site.LongitudeDeg, site.HotAirC, site.StationPressurePa,
            style.Name, style.WantedHygrometricDifferenceK, style.TargetMoistureWetBasis, style.PlenumCeilingC,
            style.HygrometricDifferenceCeilingK, style.WetLeafHygrometricDifferenceCeilingK,
            style.ShortestHoursSincePlucking, style.ShortestHoursSincePluckingInDryWindySpell,
            style.LongestHoursSincePlucking, style.ToleratedSpreadWetBasis, style.CoolingHours,
            stored.Feed,
            style.PlenumMarginK, style.MostTurns, style.TurnFreeLastHours, style.LeastHoursBetweenTurns, StoredWord.Of(style.Pace),
            site.Heat.LoftKW);
    }

    public StoredSite ToSite() => new(
        Id, Name, TimeZone,
        new Site(ElevationM, LatitudeDeg, LongitudeDeg, HotAirC, ToStyle(), StationPressurePa) { Heat = new() { LoftKW = LoftHeaterKW } },
        Feed);

    private WitherStyle ToStyle() => new()
    {
        Name = StyleName,
        WantedHygrometricDifferenceK = WantedHygrometricDifferenceK,
        TargetMoistureWetBasis = TargetMoistureWetBasis,
        PlenumCeilingC = PlenumCeilingC,
        HygrometricDifferenceCeilingK = HygrometricDifferenceCeilingK,
        WetLeafHygrometricDifferenceCeilingK = WetLeafHygrometricDifferenceCeilingK,
        ShortestHoursSincePlucking = ShortestHoursSincePlucking,
        ShortestHoursSincePluckingInDryWindySpell = ShortestHoursSincePluckingInDryWindySpell,
        LongestHoursSincePlucking = LongestHoursSincePlucking,
        ToleratedSpreadWetBasis = ToleratedSpreadWetBasis,
        CoolingHours = CoolingHours,
        PlenumMarginK = PlenumMarginK,
        MostTurns = (int)MostTurns,
        TurnFreeLastHours = TurnFreeLastHours,
        LeastHoursBetweenTurns = LeastHoursBetweenTurns,
        Pace = StoredWord.Read<WitherPace>(Pace)!.Value,
    };
}
