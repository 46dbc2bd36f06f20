using WitherAdvisor.Loft.Kept.Coefficients;

namespace WitherAdvisor.Words.Learning;

/// <summary>Why a recalibration failed, in a sentence.</summary>
public static class RecalibrationFailureWording
{
    public static Told Tell(Wordbook words, RecalibrationFailure failure) => failure switch
    {
        RecalibrationFailure.OwnFault => Told.Now(words["recalibration_failure.own_fault"]),
        RecalibrationFailure.SaidThen then => Told.Then(words, then.Sentence),
        _ => throw new ArgumentOutOfRangeException(nameof(failure), failure, "No words for this failure."),
    };

    public static string Sentence(Wordbook words, RecalibrationFailure failure) => Tell(words, failure).Text;
}
