using System.Globalization;
using WitherAdvisor.SyntheticSeasons;

// A number of batches for a quick look; the committed document has all of them.
Console.Write(ReliabilityDocument.Make(args is [var batches] ? int.Parse(batches, CultureInfo.InvariantCulture) : Reliability.Batches));
