namespace WitherAdvisor.Loft.Kept.Coefficients;

/// <summary>Why a recalibration failed.</summary>
public abstract record RecalibrationFailure
{
    private RecalibrationFailure()
    {
    }

    /// <summary>By a fault of the service, which its log tells.</summary>
    public sealed record OwnFault : RecalibrationFailure;

    /// <summary>Kept by a version that kept sentences.</summary>
    public sealed record SaidThen(string Sentence) : RecalibrationFailure;
}
