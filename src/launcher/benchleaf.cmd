@echo off
rem Starts Benchleaf with its class archive. Nothing but the program's own words is printed, also where the archive is
rem missing or was made by another Java.
setlocal
set "benchleaf_home=%~dp0.."
set "benchleaf_java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "benchleaf_java=%JAVA_HOME%\bin\java.exe"
"%benchleaf_java%" "-XX:SharedArchiveFile=%benchleaf_home%\lib\benchleaf.jsa" -Xshare:auto -Xlog:disable -Xlog:all=off -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -jar "%benchleaf_home%\lib\benchleaf.jar" %*
exit /b %errorlevel%
