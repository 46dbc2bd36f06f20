using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using Xunit;

namespace WitherAdvisor.Process.Tests;

[Collection(Alone.Name)]
public sealed class ImportCrashTests
{
    // Few rows with long notes: it is bytes that fill the database's cache and the network's buffers, and rows that take time.
    private const int Rows = 3_000;
    private const int NoteLength = 1_800;
    private const long EnoughInWriteAheadLog = 1_000_000;

    private static readonly Uri Import = new($"/v1/sites/{InventedLoft.Site}/outcomes/import?mode=take", UriKind.Relative);

    [Fact]
    public async Task An_import_that_is_killed_half_way_leaves_nothing_and_can_be_run_again()
    {
        CancellationToken cancel = TestContext.Current.CancellationToken;
        using TemporaryFolder folder = new();
        string log = LogOfPast.Of(Rows, NoteLength);
        Task<HttpResponseMessage> sent;
        await using (RunningService service = new(folder.Path))
        {
            await service.Start();
            await new InventedLoft(service).Tell();
            Assert.Empty(await Exported(service));
            long before = WriteAheadLog(folder);
            sent = service.Http.PostAsync(Import, Csv(log), cancel);
            // Rows stand in the write-ahead log long before the one commit that makes them count.
            while (WriteAheadLog(folder) < before + EnoughInWriteAheadLog)
            {
                Assert.False(sent.IsCompleted, "the import was over before it could be killed");
                await Task.Delay(1, cancel);
            }
        }

        await Assert.ThrowsAnyAsync<Exception>(() => sent);

        await using RunningService again = new(folder.Path);
        await again.Start();
        Assert.Empty(await Exported(again));
        using HttpResponseMessage taken = await again.Http.PostAsync(Import, Csv(log), cancel);
        Assert.Equal(HttpStatusCode.OK, taken.StatusCode);
        Assert.Equal(Rows, (int)JsonNode.Parse(await taken.Content.ReadAsStringAsync(cancel))!["new"]!);
        Assert.Equal(Rows, (await Exported(again)).Count);
    }

    [Fact]
    public async Task An_export_that_is_killed_half_way_harms_nothing()
    {
        CancellationToken cancel = TestContext.Current.CancellationToken;
        using TemporaryFolder folder = new();
        await using (RunningService service = new(folder.Path))
        {
            await service.Start();
            await new InventedLoft(service).Tell();
            using HttpResponseMessage taken = await service.Http.PostAsync(Import, Csv(LogOfPast.Of(Rows, NoteLength)), cancel);
            Assert.Equal(HttpStatusCode.OK, taken.StatusCode);
            using HttpClient reader = new() { BaseAddress = service.Address, Timeout = Patience.Longest };
            using HttpResponseMessage export = await reader.GetAsync(Address("csv"), HttpCompletionOption.ResponseHeadersRead, cancel);
            await using Stream body = await export.Content.ReadAsStreamAsync(cancel);
            await body.ReadExactlyAsync(new byte[10_000], cancel);

            await service.Kill();

            // Had all of it been sent before the kill, the rest would still come out of the network's buffers.
            await Assert.ThrowsAnyAsync<IOException>(() => body.CopyToAsync(Stream.Null, cancel));
        }

        await using RunningService again = new(folder.Path);
        await again.Start();
        Assert.Equal(Rows, (await Exported(again)).Count);
    }

    private static Uri Address(string format) => new($"/v1/sites/{InventedLoft.Site}/outcomes/export?format={format}", UriKind.Relative);

    private static async Task<IReadOnlyList<string>> Exported(RunningService service) =>
        (await service.Http.GetStringAsync(Address("csv"))).Split("\r\n", StringSplitOptions.RemoveEmptyEntries)[1..];

    private static long WriteAheadLog(TemporaryFolder folder)
    {
        FileInfo file = new(folder.File("witheradvisor.db-wal"));
        return file.Exists ? file.Length : 0;
    }

    private static StringContent Csv(string log) => new(log, Encoding.UTF8, "text/csv");
}
