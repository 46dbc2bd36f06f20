using WitherAdvisor.Api.Http;

namespace WitherAdvisor.Api.Batches;

/// <summary>The answer to what only makes sense while leaf lies on its trough.</summary>
internal static class AlreadyUnloaded
{
    public static ProblemResult Batch(string id) => Problem.Conflict(
        "already-unloaded", "The batch has left its trough.", $"Batch '{id}' was unloaded already.");
}
