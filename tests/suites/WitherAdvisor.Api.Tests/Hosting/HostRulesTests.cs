using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.Configuration;
using WitherAdvisor.Api.Hosting;
using WitherAdvisor.Store.Sqlite;

namespace WitherAdvisor.Api.Tests.Hosting;

public sealed class HostRulesTests
{
    [Fact]
    public void Unless_told_otherwise_it_listens_on_loopback_only() =>
        Assert.Equal("http://127.0.0.1:5080", Urls([]));

    [Theory]
    [InlineData("--urls=http://0.0.0.0:8080", "http://0.0.0.0:8080")]
    [InlineData("--http_ports=8080", null)]
    [InlineData("--Kestrel:Endpoints:Http:Url=http://0.0.0.0:8080", null)]
    public void Told_otherwise_it_does_as_told(string argument, string? urls) => Assert.Equal(urls, Urls([argument]));

    [Fact]
    public void The_database_stands_where_it_is_configured()
    {
        IConfiguration told = new ConfigurationBuilder()
            .AddInMemoryCollection([new("Store:DatabasePath", "some/where.db")]).Build();
        Assert.Equal(Path.GetFullPath("some/where.db"), DatabasePath.From(told));
        Assert.EndsWith("witheradvisor.db", DatabasePath.From(new ConfigurationBuilder().Build()));
    }

    private static string? Urls(string[] arguments)
    {
        WebApplicationBuilder builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions { Args = arguments });
        builder.Configuration.AddCommandLine(arguments);
        builder.ListenOnLoopbackUnlessTold();
        return builder.WebHost.GetSetting(WebHostDefaults.ServerUrlsKey);
    }
}
