using WitherAdvisor.Advice;

namespace WitherAdvisor.Loft.Records;

/// <summary>All that an advice was made of, and what its times and names are told by.</summary>
/// <param name="SiteName">For people.</param>
/// <param name="TimeZone">IANA zone that times of the answer are told in.</param>
/// <param name="TroughName">For people.</param>
/// <param name="Request">What the domain was asked.</param>
public sealed record AdviceInputs(string SiteName, string TimeZone, string TroughName, AdviceRequest Request);
