using WitherAdvisor.InventedEstate;

if (args is not [string folder])
{
    Console.Error.WriteLine("Say where to write: dotnet run --project tests/tools/WitherAdvisor.InventedEstate -- fixtures/invented-estate");
    return 1;
}

Directory.CreateDirectory(folder);
foreach ((string name, string content) in EstateFiles.Make(EstateFiles.Seed))
{
    File.WriteAllText(Path.Combine(folder, name), content);
    Console.WriteLine(Path.Combine(folder, name));
}

return 0;
