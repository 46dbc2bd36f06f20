namespace WitherAdvisor.Loft.Kept.Batches;

/// <summary>An advice as given, with all that it was made of, so that it can be made again byte for byte.</summary>
/// <param name="Id">Made by the service.</param>
/// <param name="BatchId">The batch it is for.</param>
/// <param name="MadeAt">When.</param>
/// <param name="ModelVersion">Version of the library that made it.</param>
/// <param name="RequestJson">Everything that went in, UTF-8 JSON.</param>
/// <param name="AnswerJson">What came out, UTF-8 JSON.</param>
public sealed record StoredAdvice(
    string Id, string BatchId, DateTimeOffset MadeAt, string ModelVersion, string RequestJson, string AnswerJson);
