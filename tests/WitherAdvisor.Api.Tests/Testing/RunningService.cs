using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using WitherAdvisor.Api.Hosting;
using WitherAdvisor.Api.Tests.Testing;

[assembly: AssemblyFixture(typeof(RunningService))]

namespace WitherAdvisor.Api.Tests.Testing;

/// <summary>The service with a database of its own, shared by all tests: each works on a site of its own.</summary>
public sealed class RunningService : WebApplicationFactory<Program>
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("witheradvisor-tests-");

    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 3, 1, 8, 0, 0, TimeSpan.Zero));

    public Caller Caller => new(CreateClient());

    public override async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        folder.Delete(recursive: true);
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting(DatabasePath.Key, Path.Combine(folder.FullName, "test.db"));
        builder.ConfigureTestServices(services => services.AddSingleton<TimeProvider>(Clock));
    }
}
