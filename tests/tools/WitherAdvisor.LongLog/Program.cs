using System.Globalization;
using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.LongLog;
using WitherAdvisor.Store.Sqlite;

if (args is not [string path, string rows])
{
    await Console.Error.WriteLineAsync("usage: <database file> <outcomes>");
    return 1;
}

await using ServiceProvider services = new ServiceCollection().AddWitherStore(path).BuildServiceProvider();
await InventedLog.Make(services, int.Parse(rows, CultureInfo.InvariantCulture));
return 0;
