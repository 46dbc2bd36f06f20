namespace WitherAdvisor.Api.Weather;

/// <summary>A CSV body as read: its good rows and the others.</summary>
internal sealed record CsvTable(IReadOnlyList<ReadingRequest> Good, IReadOnlyList<RefusedRowResponse> Refused);
