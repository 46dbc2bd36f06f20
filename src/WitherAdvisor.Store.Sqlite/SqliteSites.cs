using Dapper;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>Sites and their troughs, in SQLite.</summary>
internal sealed class SqliteSites(SqliteDatabase database) : ISiteStore
{
    private const string SiteColumns = """
        Id, Name, TimeZone, ElevationM, LatitudeDeg, LongitudeDeg, HotAirC, StationPressurePa,
        StyleName, WantedHygrometricDifferenceK, TargetMoistureWetBasis, PlenumCeilingC,
        HygrometricDifferenceCeilingK, WetLeafHygrometricDifferenceCeilingK,
        ShortestHoursSincePlucking, ShortestHoursSincePluckingInDryWindySpell, LongestHoursSincePlucking,
        ToleratedSpreadWetBasis, CoolingHours, Feed,
        PlenumMarginK, MostTurns, TurnFreeLastHours, LeastHoursBetweenTurns, Pace, LoftHeaterKW
        """;

    private const string TroughColumns = "SiteId, Id, Name, AreaM2, AirflowM3PerSM2, SlowestFanShare, MostLoadKgPerM2, HeaterKW, FanKW";

    // Not INSERT OR REPLACE: that deletes the old row first, and with it the right of troughs and weather to point to it.
    private const string PutSiteSql = $"""
        INSERT INTO Site ({SiteColumns})
        VALUES (
            @Id, @Name, @TimeZone, @ElevationM, @LatitudeDeg, @LongitudeDeg, @HotAirC, @StationPressurePa,
            @StyleName, @WantedHygrometricDifferenceK, @TargetMoistureWetBasis, @PlenumCeilingC,
            @HygrometricDifferenceCeilingK, @WetLeafHygrometricDifferenceCeilingK,
            @ShortestHoursSincePlucking, @ShortestHoursSincePluckingInDryWindySpell, @LongestHoursSincePlucking,
            @ToleratedSpreadWetBasis, @CoolingHours, @Feed,
            @PlenumMarginK, @MostTurns, @TurnFreeLastHours, @LeastHoursBetweenTurns, @Pace, @LoftHeaterKW)
        ON CONFLICT (Id) DO UPDATE SET
            Name = excluded.Name,
            TimeZone = excluded.TimeZone,
            ElevationM = excluded.ElevationM,
            LatitudeDeg = excluded.LatitudeDeg,
            LongitudeDeg = excluded.LongitudeDeg,
            HotAirC = excluded.HotAirC,
            StationPressurePa = excluded.StationPressurePa,
            StyleName = excluded.StyleName,
            WantedHygrometricDifferenceK = excluded.WantedHygrometricDifferenceK,
            TargetMoistureWetBasis = excluded.TargetMoistureWetBasis,
            PlenumCeilingC = excluded.PlenumCeilingC,
            HygrometricDifferenceCeilingK = excluded.HygrometricDifferenceCeilingK,
            WetLeafHygrometricDifferenceCeilingK = excluded.WetLeafHygrometricDifferenceCeilingK,
            ShortestHoursSincePlucking = excluded.ShortestHoursSincePlucking,
            ShortestHoursSincePluckingInDryWindySpell = excluded.ShortestHoursSincePluckingInDryWindySpell,
            LongestHoursSincePlucking = excluded.LongestHoursSincePlucking,
            ToleratedSpreadWetBasis = excluded.ToleratedSpreadWetBasis,
            CoolingHours = excluded.CoolingHours,
            Feed = excluded.Feed,
            PlenumMarginK = excluded.PlenumMarginK,
            MostTurns = excluded.MostTurns,
            TurnFreeLastHours = excluded.TurnFreeLastHours,
            LeastHoursBetweenTurns = excluded.LeastHoursBetweenTurns,
            Pace = excluded.Pace,
            LoftHeaterKW = excluded.LoftHeaterKW
        """;

    private const string PutTroughSql = $"""
        INSERT INTO Trough ({TroughColumns})
        VALUES (@SiteId, @Id, @Name, @AreaM2, @AirflowM3PerSM2, @SlowestFanShare, @MostLoadKgPerM2, @HeaterKW, @FanKW)
        ON CONFLICT (SiteId, Id) DO UPDATE SET
            Name = excluded.Name,
            AreaM2 = excluded.AreaM2,
            AirflowM3PerSM2 = excluded.AirflowM3PerSM2,
            SlowestFanShare = excluded.SlowestFanShare,
            MostLoadKgPerM2 = excluded.MostLoadKgPerM2,
            HeaterKW = excluded.HeaterKW,
            FanKW = excluded.FanKW
        """;

    public Task PutSite(StoredSite site, CancellationToken cancel = default) => database.Write(
        owner: "site",
        (connection, transaction) => connection.Execute(PutSiteSql, SiteRow.Of(site), transaction),
        cancel);

    public Task<StoredSite?> FindSite(string siteId, CancellationToken cancel = default) => database.Read(
        connection => connection.QuerySingleOrDefault<SiteRow>(
            $"SELECT {SiteColumns} FROM Site WHERE Id = @siteId", new { siteId })?.ToSite(),
        cancel);

    public Task<IReadOnlyList<StoredSite>> ListSites(CancellationToken cancel = default) => database.Read<IReadOnlyList<StoredSite>>(
        connection => [.. connection.Query<SiteRow>(
            $"SELECT {SiteColumns} FROM Site ORDER BY Id").Select(row => row.ToSite())],
        cancel);

    public Task PutTrough(StoredTrough trough, CancellationToken cancel = default) => database.Write(
        owner: $"site '{trough.SiteId}'",
        (connection, transaction) => connection.Execute(PutTroughSql, TroughRow.Of(trough), transaction),
        cancel);

    public Task<StoredTrough?> FindTrough(string siteId, string troughId, CancellationToken cancel = default) => database.Read(
        connection => connection.QuerySingleOrDefault<TroughRow>(
            $"SELECT {TroughColumns} FROM Trough WHERE SiteId = @siteId AND Id = @troughId", new { siteId, troughId })?.ToTrough(),
        cancel);

    public Task<IReadOnlyList<StoredTrough>> ListTroughs(string siteId, CancellationToken cancel = default) =>
        database.Read<IReadOnlyList<StoredTrough>>(
            connection => [.. connection.Query<TroughRow>(
                $"SELECT {TroughColumns} FROM Trough WHERE SiteId = @siteId ORDER BY Id", new { siteId }).Select(row => row.ToTrough())],
            cancel);
}
