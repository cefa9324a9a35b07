<#-- The table of THIRD-PARTY.md: one line for each library that the program brings along. -->
| library | version | licence |
|---|---|---|
<#list dependencyMap as entry>
<#assign project = entry.getKey()/>
<#assign licences = entry.getValue()/>
<#if project.groupId != "borderwright">
| ${project.groupId}:${project.artifactId} | ${project.version} | <#list licences as licence>${licence}<#if licence_has_next> or </#if></#list> |
</#if>
</#list>
