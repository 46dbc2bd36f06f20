using WitherAdvisor.Api.Weather;

namespace WitherAdvisor.Api.Pages.Upload;

/// <summary>What became of a file of which not all was kept.</summary>
/// <param name="Kept">Rows kept.</param>
/// <param name="Refused">Rows that were not, by line.</param>
public sealed record UploadOutcome(int Kept, IReadOnlyList<RefusedRowResponse> Refused);
