namespace WitherAdvisor.Loft.Outcomes;

/// <summary>What of an outcome can be but seldom is. Shares and moistures are fractions.</summary>
/// <param name="Code">To confirm it by.</param>
/// <param name="Place">Where it shows.</param>
public abstract record OutcomeOddity(OddityCode Code, OutcomePlace Place)
{
    /// <summary>The code as it is sent and kept.</summary>
    public string Word => KeptWord.Of(Code);

    public sealed record OutturnUnusual(double Outturn)
        : OutcomeOddity(OddityCode.OutturnUnusual, new OutcomePlace(OutcomeTerm.WitheredWeight));

    public sealed record OvenUnusual(double MoistureWetBasis)
        : OutcomeOddity(OddityCode.OvenUnusual, new OutcomePlace(OutcomeTerm.OvenMoisture));

    /// <summary>Weights and oven do not go together.</summary>
    /// <param name="GreenMoistureWetBasis">What the green leaf would have held if weights and oven were right.</param>
    public sealed record OvenAgainstWeight(double GreenMoistureWetBasis)
        : OutcomeOddity(OddityCode.OvenAgainstWeight, new OutcomePlace(OutcomeTerm.OvenMoisture));

    public sealed record HoursUnusual(double HoursOnTrough)
        : OutcomeOddity(OddityCode.HoursUnusual, new OutcomePlace(OutcomeTerm.Unloading));

    public sealed record TurnsUnusual(int Turns)
        : OutcomeOddity(OddityCode.TurnsUnusual, new OutcomePlace(OutcomeTerm.Turns));

    public sealed record AirTooHot(OutcomePlace Place, double DryBulbC) : OutcomeOddity(OddityCode.AirTooHot, Place);

    public sealed record DifferenceUnusual(OutcomePlace Place, double DifferenceK) : OutcomeOddity(OddityCode.DifferenceUnusual, Place);

    /// <summary>Samples of one bed differ much.</summary>
    /// <param name="Apart">Of moisture, wet basis.</param>
    public sealed record LayersFarApart(double Apart)
        : OutcomeOddity(OddityCode.LayersFarApart, new OutcomePlace(OutcomeTerm.Layers));

    /// <summary>Leaf under air does not gain weight.</summary>
    /// <param name="LeastBefore">The least share that it weighed before.</param>
    public sealed record SampleGainedWeight(OutcomePlace Place, double Share, double LeastBefore)
        : OutcomeOddity(OddityCode.SampleGainedWeight, Place);

    /// <summary>The whole bed and its sample do not go together.</summary>
    /// <param name="LeastShare">The least share that the sample weighed.</param>
    public sealed record SampleAgainstWeight(double LeastShare)
        : OutcomeOddity(OddityCode.SampleAgainstWeight, new OutcomePlace(OutcomeTerm.WitheredWeight));
}
