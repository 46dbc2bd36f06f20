using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>How rows of Outcome and AdviceFigures are written and read.</summary>
internal static class OutcomeSql
{
    private const string OutcomeColumns = """
        BatchId, AirSet, AirMeasured, Turns, TurnedAtHours, WitheredWeightKg, OvenMoistureWetBasis,
        BottomMoistureWetBasis, MiddleMoistureWetBasis, TopMoistureWetBasis, SampleWeighings, Verdict, Evenness,
        Marks, Faults, Weather, Note, EnteredAtMs, EnteredBy, Confirmed
        """;

    private const string FiguresColumns = """
        BatchId, MadeAtMs, AdviceId, ModelVersion, CoefficientSet, Spell, RainLastThreeDaysMm, RainLastTenDaysMm,
        WaterStressFraction, DryingPowerKpaMPerS, SurfaceWaterKgPerKg, SurfaceWaterDeviationKgPerKg,
        TissueMoistureWetBasisPercent, TissueMoistureDeviationPoints, AdvisedHours, AdvisedDryBulbC,
        AdvisedHygrometricDifferenceK, AdvisedTurnEveryHours, ReadyP10Hours, ReadyP50Hours, ReadyP90Hours,
        ExpectedOutturnPercent
        """;

    public const string AddOutcome = $"""
        INSERT INTO Outcome ({OutcomeColumns}, Version)
        VALUES (
            @BatchId, @AirSet, @AirMeasured, @Turns, @TurnedAtHours, @WitheredWeightKg, @OvenMoistureWetBasis,
            @BottomMoistureWetBasis, @MiddleMoistureWetBasis, @TopMoistureWetBasis, @SampleWeighings, @Verdict, @Evenness,
            @Marks, @Faults, @Weather, @Note, @EnteredAtMs, @EnteredBy, @Confirmed,
            1 + (SELECT COALESCE(MAX(Version), 0) FROM Outcome WHERE BatchId = @BatchId))
        """;

    public const string Versions = $"SELECT {OutcomeColumns} FROM Outcome WHERE BatchId = @batchId ORDER BY Version DESC";

    public const string LastAdvice = $"""
        SELECT {FiguresColumns} FROM AdviceFigures WHERE BatchId = @batchId ORDER BY MadeAtMs DESC, AdviceId DESC LIMIT 1
        """;

    public const string AddFigures = $"""
        INSERT INTO AdviceFigures ({FiguresColumns})
        VALUES (
            @BatchId, @MadeAtMs, @AdviceId, @ModelVersion, @CoefficientSet, @Spell, @RainLastThreeDaysMm,
            @RainLastTenDaysMm, @WaterStressFraction, @DryingPowerKpaMPerS, @SurfaceWaterKgPerKg,
            @SurfaceWaterDeviationKgPerKg, @TissueMoistureWetBasisPercent, @TissueMoistureDeviationPoints, @AdvisedHours,
            @AdvisedDryBulbC, @AdvisedHygrometricDifferenceK, @AdvisedTurnEveryHours, @ReadyP10Hours, @ReadyP50Hours,
            @ReadyP90Hours, @ExpectedOutturnPercent)
        """;

    public const string ListScales = "SELECT Name, LeastMark, MostMark FROM TasterScale WHERE SiteId = @siteId ORDER BY Place";

    /// <summary>Where the second and the third of the rows begin that a line of the log is read into.</summary>
    public const string SplitOn = "BatchId,BatchId";

    private static readonly string Line = $"SELECT {Of("b", BatchSql.Columns)}, {Of("o", OutcomeColumns)}, {Of("f", FiguresColumns)}";

    private const string NewestOutcome = "Outcome o ON o.BatchId = b.Id AND o.Version = (SELECT MAX(Version) FROM Outcome WHERE BatchId = b.Id)";

    private const string LastFigures = """
        LEFT JOIN AdviceFigures f ON f.BatchId = b.Id AND (f.MadeAtMs, f.AdviceId) = (
            SELECT MadeAtMs, AdviceId FROM AdviceFigures WHERE BatchId = b.Id ORDER BY MadeAtMs DESC, AdviceId DESC LIMIT 1)
        """;

    public static readonly string BatchById = $"{Line} FROM Batch b LEFT JOIN {NewestOutcome} {LastFigures} WHERE b.Id = @batchId";

    public static readonly string BatchByLabel = $"""
        {Line} FROM Batch b LEFT JOIN {NewestOutcome} {LastFigures}
        WHERE b.SiteId = @siteId AND b.TroughId = @troughId AND b.LoadedAtMs = @loadedAtMs AND b.Division = @division AND b.Field = @field
        ORDER BY b.Id LIMIT 1
        """;

    /// <summary>In the order of the index, so that nothing has to be sorted before the first row comes.</summary>
    public static string Log(OutcomeFilter filter) => $"""
        {Line} FROM Batch b INDEXED BY BatchByLoading JOIN {NewestOutcome} {LastFigures}
        WHERE b.SiteId = @siteId AND b.LoadedAtMs >= @fromMs AND b.LoadedAtMs < @toMs
          AND (@cultivar IS NULL OR b.Cultivar = @cultivar) AND (@spell IS NULL OR f.Spell = @spell)
        ORDER BY b.LoadedAtMs {Order(filter)}, b.Id {Order(filter)}
        """;

    public const string Loaded = $"""
        SELECT b.LoadedAtMs, f.Spell FROM Batch b {LastFigures}
        WHERE b.SiteId = @siteId AND b.LoadedAtMs >= @fromMs AND (b.Ended IS NULL OR b.Ended = 'unloaded')
        ORDER BY b.LoadedAtMs, b.Id
        """;

    private static string Order(OutcomeFilter filter) => filter.NewestFirst ? "DESC" : "ASC";

    private static string Of(string table, string columns) =>
        string.Join(", ", columns.Split(',').Select(column => $"{table}.{column.Trim()}"));
}
