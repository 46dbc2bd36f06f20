using WitherAdvisor.SyntheticSeasons;

Console.Write(ReliabilityDocument.Make());
