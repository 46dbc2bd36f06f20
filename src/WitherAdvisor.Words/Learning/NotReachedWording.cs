namespace WitherAdvisor.Words.Learning;

/// <summary>Why an input that is moved has no hours to target, in a sentence.</summary>
public static class NotReachedWording
{
    /// <param name="withinHours">That the air is looked at for.</param>
    public static string Sentence(int withinHours) => $"The target is not reached within the {withinHours} h that the air is looked at for.";
}
