namespace WitherAdvisor.Fields;

/// <summary>A request whose fields have to fit each other.</summary>
internal interface ICrossChecked
{
    /// <summary>What does not fit; fields are named from this object on.</summary>
    IEnumerable<FieldError> CrossCheck();
}
