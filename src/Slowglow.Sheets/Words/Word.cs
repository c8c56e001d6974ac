namespace Slowglow.Sheets;

/// <summary>A word of the document and where it stands.</summary>
internal readonly record struct Word(string Text, Place Place);
