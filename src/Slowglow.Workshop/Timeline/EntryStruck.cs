namespace Slowglow.Workshop.Timeline;

/// <summary>An earlier entry was wrong: it stays readable and counts no more. What is right instead is an entry of its own.</summary>
public sealed class EntryStruck : EntryWith<Strike>;
