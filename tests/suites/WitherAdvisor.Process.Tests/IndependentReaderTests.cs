using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;
using Xunit;

namespace WitherAdvisor.Process.Tests;

/// <summary>What others read in our exports: csv-parse and hyparquet, from npm, which share no code with what wrote them.</summary>
[Collection(Alone.Name)]
public sealed class IndependentReaderTests
{
    private const int Rows = 5_300;

    [Fact]
    public async Task Other_readers_find_the_same_rows_in_both_exports()
    {
        CancellationToken cancel = TestContext.Current.CancellationToken;
        using TemporaryFolder folder = new();
        await using RunningService service = new(folder.Path);
        await service.Start();
        await new InventedLoft(service).Tell();
        using StringContent log = new(LogOfPast.Of(Rows), Encoding.UTF8, "text/csv");
        using HttpResponseMessage taken = await service.Http.PostAsync(
            new Uri($"/v1/sites/{InventedLoft.Site}/outcomes/import?mode=take", UriKind.Relative), log, cancel);
        Assert.True(taken.IsSuccessStatusCode, await taken.Content.ReadAsStringAsync(cancel));

        JsonNode csv = await Read(service, folder, "csv");
        JsonNode parquet = await Read(service, folder, "parquet");

        Assert.Equal((Rows, Rows), (csv["rows"]!.AsArray().Count, parquet["rows"]!.AsArray().Count));
        Assert.Equal(2, (int)parquet["groups"]!);
        foreach (int row in new[] { 0, 1, 4_999, 5_000, Rows - 1 })
        {
            JsonObject text = csv["rows"]![row]!.AsObject();
            JsonObject typed = parquet["rows"]![row]!.AsObject();
            Assert.Equal(text.Select(cell => cell.Key), typed.Select(cell => cell.Key));
            Assert.All(text, cell => AssertSame(cell.Key, (string?)cell.Value, typed[cell.Key]));
        }

        JsonNode last = parquet["rows"]![Rows - 1]!;
        Assert.Equal((1000 + (Rows - 1) % 200, 8 + (Rows - 1) % 5 + 0.25), ((double)last["green_weight_kg"]!, (double)last["on_trough_hours"]!));
        Assert.Equal($"=row {Rows - 1}, 茶", (string)last["note"]!);
        Assert.Null(last["advice_id"]);
    }

    private static void AssertSame(string column, string? text, JsonNode? typed)
    {
        if (text is null || typed is null)
        {
            Assert.True(text is null && typed is null, $"{column}: {text} and {typed}");
        }
        else if (typed.GetValueKind() == System.Text.Json.JsonValueKind.Number)
        {
            Assert.Equal(double.Parse(text), (double)typed);
        }
        else if (column.EndsWith("_at", StringComparison.Ordinal))
        {
            Assert.Equal(DateTimeOffset.Parse(text), DateTimeOffset.Parse((string)typed!));
        }
        else
        {
            // Only CSV guards against formulas.
            Assert.Equal(text.StartsWith("'=", StringComparison.Ordinal) ? text[1..] : text, (string)typed!);
        }
    }

    private static async Task<JsonNode> Read(RunningService service, TemporaryFolder folder, string format)
    {
        string file = folder.File($"log.{format}");
        await File.WriteAllBytesAsync(file, await service.Http.GetByteArrayAsync(
            new Uri($"/v1/sites/{InventedLoft.Site}/outcomes/export?format={format}", UriKind.Relative)));
        ProcessStartInfo node = new("node") { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        node.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "readers", "read.mjs"));
        node.ArgumentList.Add(file);
        using System.Diagnostics.Process reader = System.Diagnostics.Process.Start(node)!;
        Task<string> wrong = reader.StandardError.ReadToEndAsync();
        string printed = await reader.StandardOutput.ReadToEndAsync();
        await reader.WaitForExitAsync();
        Assert.True(reader.ExitCode == 0, await wrong);
        return JsonNode.Parse(printed)!;
    }
}
