namespace WitherAdvisor.Words.Learning;

/// <summary>Why an input that is moved has no hours to target, in a sentence.</summary>
public static class NotReachedWording
{
    /// <summary>For so many hours the air is looked at.</summary>
    public static string Sentence(Wordbook words, int withinHours) => words.Say("input_sensitivity.not_reached_within", ("hours", withinHours));
}
