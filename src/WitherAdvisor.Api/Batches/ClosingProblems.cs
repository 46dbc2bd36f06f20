using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Closing;
using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Api.Batches;

/// <summary>Why a batch was not ended, as problems.</summary>
internal static class ClosingProblems
{
    /// <summary>The problem.</summary>
    /// <param name="batch">As the caller named it.</param>
    /// <param name="field">The field that said when.</param>
    public static ProblemResult Of(ClosingResult refused, string batch, string field) => refused switch
    {
        ClosingResult.UnknownBatch => Problem.Unknown("batch", batch),
        ClosingResult.EndedBefore ended => AlreadyEnded.Batch(ended.Batch),
        ClosingResult.BeforeLoading early => Early(field, early.At, "loaded_at", early.Batch),
        ClosingResult.BeforeLoadingOfTheOther early => Early(field, early.At, "loaded_at of the other batch", early.Other),
        ClosingResult.NoSuchOther other => Problem.InvalidInput(
            FieldError.Of("into", $"\"{other.Into}\"", $"the id of another batch of site '{other.Batch.SiteId}'")),
        _ => throw new ArgumentOutOfRangeException(nameof(refused), refused, "No problem for this result."),
    };

    private static ProblemResult Early(string field, DateTimeOffset at, string loaded, StoredBatch batch) => Problem.InvalidInput(
        FieldError.Of(field, $"\"{Rfc3339.Format(at)}\"", $"at or after {loaded}, {Rfc3339.Format(batch.Batch.LoadedAt)}"));
}
