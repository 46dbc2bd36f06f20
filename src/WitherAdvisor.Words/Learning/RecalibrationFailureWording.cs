using WitherAdvisor.Loft.Kept.Coefficients;

namespace WitherAdvisor.Words.Learning;

/// <summary>Why a recalibration failed, in a sentence.</summary>
public static class RecalibrationFailureWording
{
    public static string Sentence(RecalibrationFailure failure) => failure switch
    {
        RecalibrationFailure.OwnFault => "The service met a fault of its own; its log says which.",
        RecalibrationFailure.SaidThen then => then.Sentence,
        _ => throw new ArgumentOutOfRangeException(nameof(failure), failure, "No words for this failure."),
    };
}
