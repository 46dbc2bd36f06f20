namespace WitherAdvisor.Loft.Records;

/// <summary>In what form an advice is kept. Forms are added, never changed: old databases hold them for ever.</summary>
public enum RecordFormat
{
    /// <summary>None: no record has it.</summary>
    None = 0,

    /// <summary>Release 0.1.0: the request and the answer of REST, version 1; no digits beyond those sent.</summary>
    RestOfVersion1 = 1,

    /// <summary>The domain's inputs and outcome, and the answer as sent.</summary>
    Domain = 2,
}
