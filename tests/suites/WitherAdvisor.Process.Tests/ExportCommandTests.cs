using System.Diagnostics;
using System.Text;
using Xunit;

namespace WitherAdvisor.Process.Tests;

/// <summary>The log written to a file from the command line, beside a service that goes on.</summary>
[Collection(Alone.Name)]
public sealed class ExportCommandTests
{
    [Theory]
    [InlineData("csv")]
    [InlineData("parquet")]
    public async Task It_writes_what_the_service_sends(string format)
    {
        CancellationToken cancel = TestContext.Current.CancellationToken;
        using TemporaryFolder folder = new();
        await using RunningService service = new(folder.Path);
        await service.Start();
        await new InventedLoft(service).Tell();
        using StringContent log = new(LogOfPast.Of(300), Encoding.UTF8, "text/csv");
        using HttpResponseMessage taken = await service.Http.PostAsync(
            new Uri($"/v1/sites/{InventedLoft.Site}/outcomes/import?mode=take", UriKind.Relative), log, cancel);
        Assert.True(taken.IsSuccessStatusCode, await taken.Content.ReadAsStringAsync(cancel));
        string file = folder.File("log." + format);

        (int code, string complaint) = await Export(folder, "--site", InventedLoft.Site, "--format", format, "--file", file);

        Assert.Equal((0, ""), (code, complaint));
        byte[] sent = await service.Http.GetByteArrayAsync(
            new Uri($"/v1/sites/{InventedLoft.Site}/outcomes/export?format={format}", UriKind.Relative), cancel);
        Assert.Equal(sent, await File.ReadAllBytesAsync(file, cancel));
        Assert.False(File.Exists(file + ".part"));
    }

    [Theory]
    [InlineData("format is \"xlsx\"; allowed is", "--site", "hill", "--format", "xlsx", "--file", "log")]
    [InlineData("colour is not known", "--site", "hill", "--format", "csv", "--colour", "red", "--file", "log")]
    [InlineData("Usage: --site", "--format", "csv")]
    [InlineData("Usage: --site", "--site", "hill", "--site", "dale", "--format", "csv", "--file", "log")]
    [InlineData("There is no database", "--site", "hill", "--format", "csv", "--file", "log")]
    public async Task What_it_cannot_do_it_says_and_writes_nothing(string said, params string[] options)
    {
        using TemporaryFolder folder = new();

        (int code, string complaint) = await Export(folder, options);

        Assert.Equal(2, code);
        Assert.Contains(said, complaint, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(folder.Path));
    }

    [Fact]
    public async Task A_site_that_is_not_there_is_named()
    {
        using TemporaryFolder folder = new();
        await using (RunningService service = new(folder.Path))
        {
            await service.Start();
        }

        (int code, string complaint) = await Export(folder, "--site", "nowhere", "--format", "csv", "--file", folder.File("log"));

        Assert.Equal((2, "No site is called 'nowhere'."), (code, complaint.Trim()));
        Assert.False(File.Exists(folder.File("log")));
    }

    private static async Task<(int Code, string Complaint)> Export(TemporaryFolder folder, params string[] options)
    {
        ProcessStartInfo start = new("dotnet", [Path.Combine(AppContext.BaseDirectory, "export", "WitherAdvisor.Export.dll"), .. options])
        {
            WorkingDirectory = folder.Path,
            UseShellExecute = false,
            RedirectStandardError = true,
        };
        start.Environment["Store__DatabasePath"] = folder.File("witheradvisor.db");
        using System.Diagnostics.Process export = System.Diagnostics.Process.Start(start)!;
        string complaint = await export.StandardError.ReadToEndAsync();
        await export.WaitForExitAsync();
        return (export.ExitCode, complaint);
    }
}
