using System.Collections.Concurrent;
using WitherAdvisor.Api.Tests.KeptBefore;

[assembly: AssemblyFixture(typeof(KeptLofts))]

namespace WitherAdvisor.Api.Tests.KeptBefore;

/// <summary>One service for each released version, started when a test first looks into it.</summary>
public sealed class KeptLofts : IAsyncDisposable
{
    private readonly ConcurrentDictionary<string, Lazy<KeptLoft>> lofts = new(StringComparer.Ordinal);

    public KeptLoft Of(string version) => lofts.GetOrAdd(version, _ => new(() => Started(new KeptLoft(version)))).Value;

    public async ValueTask DisposeAsync()
    {
        foreach (Lazy<KeptLoft> loft in lofts.Values)
        {
            await loft.Value.DisposeAsync();
        }
    }

    /// <summary>Tests that ask at once would each start a host of their own on the one database.</summary>
    private static KeptLoft Started(KeptLoft loft)
    {
        _ = loft.Server;
        return loft;
    }
}
